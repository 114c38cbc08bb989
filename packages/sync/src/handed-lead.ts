import type { LaneRecord } from "./lane-record.ts";
import type { LaneStatus } from "./lane-status.ts";

/** `ask`: for the lead, now. `wait`: the server has not said enough, or this lane still sends. `done`: nothing more to ask for. */
export type HandedLeadStep = "ask" | "wait" | "done";

/** A link that comes later than this finds no wish any more. */
export const HANDED_WISH_MS = 30_000;

/**
 * What a phone does whose person was just handed the lead: asking is a person's doing, and entering the code was
 * it. The wish ends with the lead, with the link, and as soon as the server says that the lead is not to be had
 * at once: whatever comes later needs a person anew. SPEC SY30, SY31.
 */
export const handedLeadStep = (
  { signal, refusal, leader, unsent }: LaneStatus,
  { epoch }: Pick<LaneRecord, "epoch">,
): HandedLeadStep => {
  // A lane that is resumed begins without its link; only a link that had told of the leader was lost.
  if (signal === "noSignal") return leader ? "done" : "wait";
  if (signal === "refused" && refusal !== "lead_taken") return "done";
  if (!leader) return signal === "open" ? "done" : "wait";
  if (leader.takeOverInMs > 0) return "done";
  // A lane that led before ends first, once all of it is sent.
  return epoch > 0 && unsent > 0 ? "wait" : "ask";
};
