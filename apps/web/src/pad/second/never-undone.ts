import type { PadSnapshot } from "../pad-session.ts";

/** Entries that undo passes over: the score with which a second lane begins was not charted. SPEC PD101. */
export const neverUndone = ({ record, log }: Pick<PadSnapshot, "record" | "log">): readonly string[] => {
  const first = log.find(({ laneId }) => laneId === record.laneId)?.entry;
  return record.second && first?.body.kind === "ScoreStated" ? [first.id] : [];
};
