import {
  applyEntry,
  ENTRY_VERSION,
  type LoggedEntry,
  type MatchView,
  type Point,
} from "@courtloom/match-log";
import type { ScoreState } from "@courtloom/tennis";

/** The score as it would be after a point; nothing is charted by asking. */
export const scoreAfter = (view: MatchView, point: Point, epoch: number): ScoreState => {
  const body = { kind: "PointCharted", point } as const;
  const entry = { v: ENTRY_VERSION, id: "next", n: 1, atMs: 0, wallMs: 0, body } as const;
  const logged: LoggedEntry = { pos: view.pos + 1, laneId: "next", epoch, entry };
  return applyEntry(view, logged).score;
};
