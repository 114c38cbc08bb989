import type { Heard, MatchRef } from "../store.ts";

/** When each court's phone was last heard, by the server's clock. */
export interface HeardBook {
  /** A phone spoke to this node. */
  readonly speak: (heard: Heard) => void;
  /** What the store says, perhaps from another node. */
  readonly learn: (heard: Heard) => void;
  readonly get: (match: MatchRef) => Heard | undefined;
  /**
   * For how long nothing was heard, at `nowMs`. Counted from the start of this node at the earliest: while it
   * was down nobody could be heard, and that is no phone's silence.
   */
  readonly silentMs: (match: MatchRef, nowMs: number) => number;
  /** Words spoken here since the last call, newest of each phone. */
  readonly takeSpoken: () => readonly Heard[];
  readonly forget: (match: MatchRef) => void;
}

const keyOf = ({ academyId, matchId }: MatchRef): string => `${academyId}/${matchId}`;

/** `startedMs`: when this node began to listen, by the server's clock. */
export const createHeardBook = (startedMs: number): HeardBook => {
  const book = new Map<string, Heard>();
  const spoken = new Map<string, Heard>();
  /** An older word never replaces a newer one. */
  const keepNewer = (words: Map<string, Heard>, heard: Heard): void => {
    const key = keyOf(heard);
    if ((words.get(key)?.heardMs ?? Number.NEGATIVE_INFINITY) <= heard.heardMs) words.set(key, heard);
  };
  return {
    speak: (heard) => {
      keepNewer(book, heard);
      keepNewer(spoken, heard);
    },
    learn: (heard) => keepNewer(book, heard),
    get: (match) => book.get(keyOf(match)),
    silentMs: (match, nowMs) =>
      Math.max(0, nowMs - Math.max(startedMs, book.get(keyOf(match))?.heardMs ?? startedMs)),
    takeSpoken: () => {
      const words = [...spoken.values()];
      spoken.clear();
      return words;
    },
    forget: (match) => book.delete(keyOf(match)),
  };
};
