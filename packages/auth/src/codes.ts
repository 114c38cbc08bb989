import { randomUUID } from "node:crypto";
import { assert, type Clock, err, ok } from "@courtloom/core";
import type { Auth } from "./auth.ts";
import type { AuthStore, CodeRow } from "./auth-store.ts";
import type { CodeKeeping } from "./code-keeping.ts";
import { drawCode } from "./code-text.ts";

/** With a million codes kept, one draw in 887 meets one of them; five in a row never. */
export const DRAWS = 5;

interface CodesOptions {
  readonly store: AuthStore;
  readonly keeping: CodeKeeping;
  readonly clock: Clock;
  /** Draws a clear code; given by tests. */
  readonly draw?: () => string;
}

/** Codes that a director gives out and takes back. */
export const makeCodes = ({
  store,
  keeping,
  clock,
  draw = drawCode,
}: CodesOptions): Pick<Auth, "issueCode" | "activeCodes" | "revokeCode"> => {
  const add = async (code: string, row: Omit<CodeRow, "codeHash" | "codeSealed">): Promise<boolean> => {
    const codeHash = keeping.hash(code);
    // Both kinds of code are typed into one form.
    if (await store.findHandOver(codeHash)) return false;
    return store.addCode({ ...row, codeHash, codeSealed: keeping.seal(code, row.codeId) });
  };

  return {
    issueCode: async ({ academyId, kind, dayId, courtId, by, expiresMs }) => {
      const issuedMs = clock.wallMs();
      if (expiresMs <= issuedMs) return err("already_past");
      if ((kind === "court") !== (courtId !== undefined)) return err("court_needed");
      const row = {
        codeId: randomUUID(),
        academyId,
        kind,
        dayId,
        courtId: courtId ?? null,
        issuedBy: by,
        issuedMs,
        expiresMs,
        revokedMs: null,
      };
      for (let at = 0; at < DRAWS; at += 1) {
        const code = draw();
        if (await add(code, row)) return ok({ codeId: row.codeId, code });
      }
      assert(false, `${DRAWS} codes in a row were taken`);
    },

    activeCodes: async (academyId, dayId) =>
      (await store.activeCodes({ academyId, dayId, nowMs: clock.wallMs() })).map((row) => ({
        codeId: row.codeId,
        kind: row.kind,
        dayId: row.dayId,
        courtId: row.courtId,
        code: keeping.unseal(row.codeSealed, row.codeId),
        issuedMs: row.issuedMs,
        expiresMs: row.expiresMs,
      })),

    revokeCode: (academyId, codeId) => store.revokeCode({ academyId, codeId, atMs: clock.wallMs() }),
  };
};
