import { randomUUID } from "node:crypto";
import { err, ok, type Principal } from "@courtloom/core";
import type { ApiContext, DemoState } from "../context.ts";
import { createHistoryCache } from "../figures/history-cache.ts";
import { createHandler } from "../handler.ts";
import { createCaller } from "../router.ts";
import { createMemoryAuth } from "./memory-auth.ts";
import { createMemoryStore } from "./memory-store.ts";

export const ROLES = ["nobody", "expired", "wall", "courtside", "coach", "director"] as const;
export type Role = (typeof ROLES)[number];

export const ORIGIN = "http://club.example";
/** The morning of the day that `seedDay` makes. */
export const NOW_MS = Date.parse("2026-05-30T08:00:00Z");

const account = (academyId: string, role: "director" | "coach"): Principal => ({
  kind: "account",
  academyId,
  userId: randomUUID(),
  memberId: randomUUID(),
  name: "Maren H.",
  role,
});

/** An academy with a director in memory, and the procedures over it by caller and by HTTP as any role. */
export const makeApi = async () => {
  const memory = createMemoryStore();
  const accounts = createMemoryAuth();
  const cookies: string[] = [];
  const reported: unknown[] = [];
  const history = createHistoryCache();
  let demo: DemoState = { kind: "idle" };
  let demoStarts = 0;
  const setup = async (isDemo = false): Promise<string> => {
    const director = { displayName: "Maren H.", userId: null };
    const academy = { name: "Curlew Reach", timeZone: "Europe/Lisbon", language: "en", isDemo, director };
    const made = await memory.store.setupAcademy(academy);
    if (!made.ok) throw new Error("the memory store refused the academy");
    return made.value.academyId;
  };
  const principalAs = (role: Role, academyId: string): ApiContext["principal"] => {
    const sessionId = randomUUID();
    const at = { academyId, sessionId, dayId: randomUUID() };
    const all = {
      nobody: err("signed_out"),
      expired: err("code_expired"),
      wall: ok({ kind: "wall", ...at }),
      courtside: ok({ kind: "courtside", ...at, name: "Dana H.", courtId: randomUUID() }),
      coach: ok(account(academyId, "coach")),
      director: ok(account(academyId, "director")),
    } as const satisfies Record<Role, Awaited<ReturnType<ApiContext["principal"]>>>;
    return async () => all[role];
  };
  const contextAs = (role: Role, academyId: string): ApiContext => ({
    principal: principalAs(role, academyId),
    store: memory.store,
    log: memory.log,
    history,
    auth: accounts.auth,
    demo: {
      start: () => {
        demoStarts += 1;
        demo = { kind: "loading", done: 0, what: "Making the academy" };
      },
      state: () => demo,
    },
    clock: { wallMs: () => NOW_MS, monotonicMs: () => 0 },
    cookieHeader: undefined,
    address: "192.0.2.7",
    setCookie: ({ header }) => cookies.push(header),
    isUnavailable: (error) => error instanceof Error && error.message === "away",
  });
  return {
    memory,
    accounts,
    cookies,
    reported,
    setup,
    contextAs,
    demoStarts: () => demoStarts,
    writeCount: () => memory.writeCount() + accounts.writeCount() + demoStarts,
    callerAs: (role: Role, academyId: string) => createCaller(contextAs(role, academyId)),
    handlerAs: (role: Role, academyId: string) =>
      createHandler({
        endpoint: "/api/trpc",
        createContext: () => contextAs(role, academyId),
        report: (error) => reported.push(error),
      }),
  };
};

export type TestApi = Awaited<ReturnType<typeof makeApi>>;
