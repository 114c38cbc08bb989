import type { ByPlayer, Side } from "@courtloom/core";
import { type ChoiceBall, choiceBalls, figuresOf, type MatchFigures } from "@courtloom/decisions";
import { foldLog, type MatchView } from "@courtloom/match-log";
import type { MatchLogRow } from "./figure-store.ts";

/** A match's log folded, with what figures read of it worked out when first asked for. */
export interface FoldedMatch {
  readonly matchId: string;
  readonly head: number;
  readonly view: MatchView;
  /** Who charted, by lane. */
  readonly chartists: ReadonlyMap<string, string>;
  readonly figures: () => MatchFigures;
  readonly choices: (side: Side) => readonly ChoiceBall[];
}

const lazily = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
};

/** `undefined` for a log that does not begin with an opening. */
export const foldMatch = ({ matchId, entries, lanes }: MatchLogRow): FoldedMatch | undefined => {
  const folded = foldLog(entries);
  if (!folded.ok) return undefined;
  const view = folded.value;
  const choices: ByPlayer<() => readonly ChoiceBall[]> = {
    A: lazily(() => choiceBalls(view, "A")),
    B: lazily(() => choiceBalls(view, "B")),
  };
  return {
    matchId,
    head: entries.at(-1)?.pos ?? 0,
    view,
    chartists: new Map(lanes.map(({ laneId, chartist }) => [laneId, chartist])),
    figures: lazily(() => figuresOf(view)),
    choices: (side) => choices[side](),
  };
};
