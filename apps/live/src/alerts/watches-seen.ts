import { type WatchView, watchesOf } from "@courtloom/decisions";
import type { MatchView } from "@courtloom/match-log";

const seen = new WeakMap<MatchView, readonly WatchView[]>();

/** A view's watches, worked out once: a tile and the ledger ask for the same. */
export const watchesSeen = (view: MatchView): readonly WatchView[] => {
  const known = seen.get(view) ?? watchesOf(view);
  seen.set(view, known);
  return known;
};
