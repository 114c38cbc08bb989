import { applyEntry, ENTRY_VERSION, type EntryBody, type MatchView } from "@courtloom/match-log";
import type { ScoreState } from "@courtloom/tennis";

/** The score as it would be after a correction; nothing is charted by asking. */
export const scoreWith = (view: MatchView, body: EntryBody, epoch: number): ScoreState => {
  const entry = { v: ENTRY_VERSION, id: "preview", n: 1, atMs: 0, wallMs: 0, body } as const;
  return applyEntry(view, { pos: view.pos + 1, laneId: "preview", epoch, entry }).score;
};
