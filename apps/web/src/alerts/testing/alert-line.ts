import type { AlertLine } from "@courtloom/protocol";

/** For tests: an alert of Noor V.'s line balls on court 1, as staff see it. */
export const alertLine = (more: Partial<AlertLine> = {}): AlertLine => ({
  key: { matchId: "match-1", playerId: "noor", rate: "lineMissed", version: 1, episode: 1 },
  courtId: "court-1",
  courtNo: 1,
  side: "A",
  name: "Noor V.",
  state: "standing",
  match: { x: 10, n: 14, offPlan: 8, low: 0.45, high: 0.88 },
  since: { x: 9, n: 12, set: 2, games: [2, 1] },
  usual: 0.3,
  source: "own",
  strength: 1,
  raisedMs: 1_750_000_000_000,
  bothOwn: false,
  marks: { seen: [], useful: [] },
  ...more,
});
