import type { AuthStore, CodeRow, LeadHolder, LeadLaneRef, NewCourtside } from "../auth-store.ts";

/** An academy with a director who has an account, and a day with one court. Ids are not used elsewhere. */
export interface ContractAcademy {
  readonly academyId: string;
  readonly memberId: string;
  readonly userId: string;
  readonly dayId: string;
  readonly courtId: string;
}

/** Charting, as the match log knows of it. */
export interface LeadHarness {
  /** Opens a match on the academy's court, led by a lane of `owner`. */
  readonly openMatch: (academy: ContractAcademy, owner: LeadHolder) => Promise<LeadLaneRef>;
  /** Another lane leads that match from now on; its id comes back. */
  readonly takeOver: (lead: LeadLaneRef, owner: LeadHolder) => Promise<string>;
}

export interface ContractHarness extends LeadHarness {
  readonly store: AuthStore;
  /** An academy is real unless it is the demonstration, of which there is one at most. */
  readonly makeAcademy: (isDemo: boolean) => Promise<ContractAcademy>;
  /** Another academy's day and court, which need no director of their own. */
  readonly makeOther: () => Promise<ContractAcademy>;
  readonly close: () => Promise<void>;
}

export const NOW = Date.UTC(2026, 4, 30, 9);
const HOUR = 3_600_000;

let serial = 0;
export const unique = (word: string): string => {
  serial += 1;
  return `${word}-${serial}`;
};

export const makeCode = (academy: ContractAcademy, change: Partial<CodeRow> = {}): CodeRow => ({
  codeId: unique("code"),
  academyId: academy.academyId,
  kind: "court",
  dayId: academy.dayId,
  courtId: academy.courtId,
  codeHash: unique("hash"),
  codeSealed: "sealed",
  issuedBy: academy.memberId,
  issuedMs: NOW + serial,
  expiresMs: NOW + HOUR,
  revokedMs: null,
  ...change,
});

export const makeSession = (code: CodeRow, change: Partial<NewCourtside> = {}): NewCourtside => ({
  sessionId: unique("session"),
  academyId: code.academyId,
  codeId: code.codeId,
  tokenHash: unique("token"),
  name: "Wren",
  openedMs: NOW + serial,
  expiresMs: code.expiresMs,
  ...change,
});
