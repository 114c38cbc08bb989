/** Why a message was not taken. Closed: a client has a sentence for each. */
export const REFUSALS = [
  "bad_shape",
  "too_large",
  "old_version",
  "new_version",
  "signed_out",
  "code_expired",
  "forbidden",
  "unknown_match",
  "unknown_day",
  "unknown_lane",
  "lead_taken",
  "sealed",
  "busy",
  "unavailable",
] as const;
export type RefusalCode = (typeof REFUSALS)[number];

/** `retry`: the same message may be taken later, after `afterMs`. Nothing on the phone is deleted because of a refusal. */
export interface Refusal {
  readonly ok: false;
  readonly code: RefusalCode;
  readonly retry: boolean;
  readonly afterMs?: number;
}
