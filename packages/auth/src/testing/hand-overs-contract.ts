import { expect, it } from "vitest";
import type { LeadHolder, LeadLaneRef, NewHandOver } from "../auth-store.ts";
import {
  type ContractAcademy,
  type ContractHarness,
  makeCode,
  makeSession,
  NOW,
  unique,
} from "./contract-harness.ts";

const MINUTE = 60_000;
const DANA: LeadHolder = { kind: "courtside", id: "session of Dana" };
const ROSA: LeadHolder = { kind: "courtside", id: "session of Rosa" };

type Bench = ContractHarness & { readonly own: ContractAcademy; readonly other: ContractAcademy };

/** Hand-over codes, part of the contract of every `AuthStore`. */
export const handOversContract = (bench: () => Bench): void => {
  const store = () => bench().store;
  const makeFor = (lead: LeadLaneRef, codeId: string, change: Partial<NewHandOver> = {}): NewHandOver => ({
    ...lead,
    handOverId: unique("hand-over"),
    codeHash: unique("hash"),
    codeId,
    owner: DANA,
    level: "every",
    madeMs: NOW,
    endsMs: NOW + 10 * MINUTE,
    ...change,
  });
  /** A match that Dana leads, the court's code, and a code for handing it over. */
  const begin = async (owner: LeadHolder = DANA) => {
    const { own, openMatch } = bench();
    const code = makeCode(own);
    await store().addCode(code);
    const lead = await openMatch(own, owner);
    const made = makeFor(lead, code.codeId, { owner });
    expect(await store().addHandOver(made)).toBe("added");
    return { code, lead, made };
  };
  const accept = (made: NewHandOver, to: LeadHolder = ROSA, atMs = NOW + 1) =>
    store().acceptHandOver({
      ...{ academyId: made.academyId, handOverId: made.handOverId },
      ...{ to, atMs, untilMs: atMs + MINUTE },
    });
  const find = async (made: NewHandOver) => store().findHandOver(made.codeHash);

  it("[AU21, DB20] keeps a hand-over code and finds it by its hash, with the court's code", async () => {
    const { code, lead, made } = await begin();
    const { codeId, kind, dayId, courtId, expiresMs, revokedMs } = code;
    expect(await find(made)).toEqual({
      ...{ codeId, kind, dayId, courtId, expiresMs, revokedMs, ...lead },
      ...{ handOverId: made.handOverId, chartist: "Dana H.", level: "every", leads: true },
      ...{ endsMs: made.endsMs, withdrawnMs: null, granted: null },
    });
    expect(await store().findHandOver("no such hash")).toBeUndefined();
    expect(await store().addHandOver(makeFor(lead, code.codeId, { codeHash: made.codeHash }))).toBe(
      "hash_taken",
    );
    expect(await find(made)).toMatchObject({ withdrawnMs: null });
  });

  it("[AU22, DB21] takes one only for the lane that leads and from whom it belongs to", async () => {
    const { code, lead } = await begin();
    const ofMember = await begin({ kind: "member", id: bench().own.memberId });
    const wrong = [
      makeFor({ ...lead, laneId: "another lane" }, code.codeId),
      makeFor({ ...lead, matchId: "another match" }, code.codeId),
      makeFor({ ...lead, academyId: bench().other.academyId }, code.codeId),
      makeFor(lead, code.codeId, { owner: { kind: "member", id: bench().own.memberId } }),
      makeFor(ofMember.lead, code.codeId, { owner: { kind: "member", id: "somebody else" } }),
    ];
    for (const made of wrong) {
      expect(await store().addHandOver(made)).toBe("not_lead");
      expect(await find(made)).toBeUndefined();
    }
    await bench().takeOver(lead, ROSA);
    expect(await store().addHandOver(makeFor(lead, code.codeId))).toBe("not_lead");
  });

  it("[AU22] ends with the next one that its lane makes, with a new lead, and when it is withdrawn", async () => {
    const { code, lead, made } = await begin();
    const next = makeFor(lead, code.codeId, { madeMs: NOW + 5 });
    expect(await store().addHandOver(next)).toBe("added");
    expect(await find(made)).toMatchObject({ withdrawnMs: NOW + 5 });
    expect(await accept(made)).toBe(false);
    const withdraw = (change: object = {}) =>
      store().withdrawHandOvers({ ...lead, owner: DANA, atMs: NOW + 6, ...change });
    expect(await withdraw({ academyId: bench().other.academyId })).toBe(false);
    expect(await withdraw({ owner: { kind: "member", id: DANA.id } })).toBe(false);
    expect(await withdraw()).toBe(true);
    expect(await withdraw()).toBe(false);
    expect(await find(next)).toMatchObject({ withdrawnMs: NOW + 6 });
    expect(await accept(next)).toBe(false);
    const last = makeFor(lead, code.codeId);
    await store().addHandOver(last);
    await bench().takeOver(lead, ROSA);
    expect(await find(last)).toMatchObject({ leads: false, withdrawnMs: null });
    expect(await accept(last)).toBe(false);
  });

  it("[AU23, DB22] lets one person in, however many come at once, and nobody after its end", async () => {
    const { made } = await begin();
    const others = Array.from({ length: 5 }, (_, at) => ({ kind: "courtside", id: `phone ${at}` }) as const);
    const answers = await Promise.all(others.map((to) => accept(made, to)));
    expect(answers.filter(Boolean)).toHaveLength(1);
    const winner = others[answers.indexOf(true)];
    expect(await find(made)).toMatchObject({ granted: { ...winner, untilMs: NOW + 1 + MINUTE } });
    const brief = await begin();
    expect(await accept(brief.made, ROSA, brief.made.endsMs)).toBe(false);
    expect(await accept(brief.made, ROSA, brief.made.endsMs - 1)).toBe(true);
  });

  it("[AU24] opens the session with it, or neither", async () => {
    const { code, made } = await begin();
    const enter = async () => {
      const session = makeSession(code);
      const to = { kind: "courtside", id: session.sessionId } as const;
      const accepted = await store().acceptHandOver({
        ...{ academyId: made.academyId, handOverId: made.handOverId, to },
        ...{ atMs: NOW + 1, untilMs: NOW + MINUTE, session },
      });
      return { accepted, found: await store().findCourtside(session.tokenHash) };
    };
    expect(await enter()).toMatchObject({ accepted: true, found: { codeId: code.codeId, name: "Wren" } });
    expect(await enter()).toEqual({ accepted: false, found: undefined });
  });

  it("[AU14] accepts none under another academy", async () => {
    const { made } = await begin();
    expect(await accept({ ...made, academyId: bench().other.academyId })).toBe(false);
    expect(await find(made)).toMatchObject({ granted: null });
  });
};
