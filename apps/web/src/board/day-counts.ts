import type { TileState } from "@courtloom/protocol";
import type { Freshness } from "./freshness.ts";

/** Courts of a day by what they are at. A silent court is in play but counted as silent. SPEC rule BD8. */
export interface DayCounts {
  readonly inPlay: number;
  readonly silent: number;
  readonly waiting: number;
  readonly suspended: number;
  readonly over: number;
}

export interface CountedCourt {
  readonly state: TileState;
  readonly freshness: Freshness["kind"];
}

export const countDay = (courts: readonly CountedCourt[]): DayCounts => {
  const at = (state: TileState) => courts.filter((court) => court.state === state);
  const playing = at("playing");
  const silent = playing.filter((court) => court.freshness !== "heard").length;
  return {
    inPlay: playing.length - silent,
    silent,
    waiting: at("waiting").length,
    suspended: at("suspended").length,
    over: at("over").length,
  };
};

const WORDS = [
  ["inPlay", "in play"],
  ["silent", "silent"],
  ["waiting", "waiting"],
  ["suspended", "suspended"],
  ["over", "over"],
] as const satisfies readonly (readonly [keyof DayCounts, string])[];

/** The counts worth saying, in order: "in play" always, the others when there are any. */
export const countItems = (counts: DayCounts): readonly { readonly count: number; readonly word: string }[] =>
  WORDS.map(([key, word]) => ({ count: counts[key], word })).filter(
    ({ count, word }) => count > 0 || word === "in play",
  );
