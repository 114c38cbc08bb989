import { randomUUID } from "node:crypto";
import { type AccountPrincipal, assert, type Clock, type CourtsidePrincipal, err, ok } from "@courtloom/core";
import type { Auth } from "./auth.ts";
import type { AuthStore, LeadHolder, NewHandOver } from "./auth-store.ts";
import type { CodeKeeping } from "./code-keeping.ts";
import { drawCode } from "./code-text.ts";
import { DRAWS } from "./codes.ts";
import type { Limits } from "./limits.ts";

/** Long enough to pass a phone over and type six characters, too short to be found lying about. */
export const HAND_OVER_MS = 10 * 60_000;

interface HandOversOptions {
  readonly store: AuthStore;
  readonly keeping: CodeKeeping;
  readonly clock: Clock;
  readonly limits: Limits;
  /** Draws a clear code; given by tests. */
  readonly draw?: () => string;
}

type Hands = AccountPrincipal | CourtsidePrincipal;

export const holderOf = (principal: Hands): LeadHolder =>
  principal.kind === "account"
    ? { kind: "member", id: principal.memberId }
    : { kind: "courtside", id: principal.sessionId };

/** Codes by which whoever leads a match hands it over. SPEC AU21, AU22. */
export const makeHandOvers = ({
  store,
  keeping,
  clock,
  limits,
  draw = drawCode,
}: HandOversOptions): Pick<Auth, "makeHandOver" | "withdrawHandOver"> => {
  /** The court code that the other person comes in under; undefined when there is none. */
  const codeIdFor = async (by: Hands, court: { readonly dayId: string; readonly courtId: string }) => {
    const query = { academyId: by.academyId, nowMs: clock.wallMs() };
    if (by.kind === "courtside") {
      const phones = await store.activeCourtside({ ...query, dayId: by.dayId });
      return phones.find(({ sessionId }) => sessionId === by.sessionId)?.codeId;
    }
    const codes = await store.activeCodes({ ...query, dayId: court.dayId });
    return codes.findLast(({ kind, courtId }) => kind === "court" && courtId === court.courtId)?.codeId;
  };

  const add = async (made: Omit<NewHandOver, "codeHash">) => {
    for (let at = 0; at < DRAWS; at += 1) {
      const code = draw();
      const codeHash = keeping.hash(code);
      if (await store.findCode(codeHash)) continue;
      const added = await store.addHandOver({ ...made, codeHash });
      if (added === "not_lead") return err("not_lead" as const);
      if (added === "added") return ok({ handOverId: made.handOverId, code, endsMs: made.endsMs });
    }
    assert(false, `${DRAWS} codes in a row were taken`);
  };

  return {
    makeHandOver: async ({ by, matchId, laneId, level, court }) => {
      const madeMs = clock.wallMs();
      const owner = holderOf(by);
      const attempt = await limits.handOver(`${owner.kind} ${owner.id}`, madeMs);
      if (!attempt.allowed) return err("too_many_tries");
      const codeId = await codeIdFor(by, court);
      if (codeId === undefined) return err("no_code");
      const { academyId } = by;
      const handOverId = randomUUID();
      const endsMs = madeMs + HAND_OVER_MS;
      return add({ academyId, handOverId, codeId, matchId, laneId, owner, level, madeMs, endsMs });
    },

    withdrawHandOver: ({ by, matchId, laneId }) =>
      store.withdrawHandOvers({
        ...{ academyId: by.academyId, matchId, laneId },
        ...{ owner: holderOf(by), atMs: clock.wallMs() },
      }),
  };
};
