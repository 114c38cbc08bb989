import type { TileEnds, TileNextChange, TilePause } from "@courtloom/protocol";

/** So long after a pause is over its time is still said; later play has gone on and was not charted. */
const STILL_SAID_SECONDS = 60;

const NEXT = {
  game: "Change after this game",
  gameAndOne: "Change after this game and one more",
  later: "No change after this game",
  tieBreak: "Change after this tie-break",
  set: "Change after this set",
} satisfies Record<Exclude<TileNextChange["kind"], "points">, string>;

const nextWords = (next: TileNextChange): string => {
  if (next.kind !== "points") return NEXT[next.kind];
  return next.points === 1 ? "Change after this point" : `Change in ${next.points} points`;
};

const pauseName = ({ kind, change }: TilePause): string => {
  if (kind === "set") return change ? "Between sets, ends change" : "Between sets, same ends";
  return kind === "rest" ? "Change of ends" : "Change of ends, no rest";
};

/** "64 s left", "time is up", or nothing where it is not known. A second ahead of the server counts as none. */
const timeWords = ({ sinceMs, allowedSeconds }: TilePause, serverNowMs: number): string => {
  if (sinceMs === undefined) return "";
  const left = allowedSeconds - Math.max(0, Math.floor((serverNowMs - sinceMs) / 1000));
  if (left > 0) return `, ${left} s left`;
  return left > -STILL_SAID_SECONDS ? ", time is up" : "";
};

const NEXT_SHORT = {
  game: "this game",
  gameAndOne: "2 games",
  later: "not this game",
  tieBreak: "tie-break",
  set: "this set",
} satisfies typeof NEXT;

/** The same beside a mark, where there is room for two words; null where there is nothing to say. SPEC rule BD40. */
export const nextChangeShort = (ends: TileEnds | undefined, serverNowMs: number): string | null => {
  if (ends?.pause) return `${ends.pause.change ? "now" : "set break"}${timeWords(ends.pause, serverNowMs)}`;
  if (!ends?.next) return null;
  if (ends.next.kind !== "points") return NEXT_SHORT[ends.next.kind];
  return ends.next.points === 1 ? "this point" : `${ends.next.points} points`;
};

/** How close a court is to a change of ends, in a few words; null where there is nothing to say. SPEC rule BD40. */
export const nextChangeWords = (ends: TileEnds | undefined, serverNowMs: number): string | null => {
  if (ends?.pause) return `${pauseName(ends.pause)}${timeWords(ends.pause, serverNowMs)}`;
  return ends?.next ? nextWords(ends.next) : null;
};
