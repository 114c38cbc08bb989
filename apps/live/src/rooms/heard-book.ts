import type { Heard, MatchRef } from "../store.ts";

/** When each court's phone was last heard, by the server's clock. */
export interface HeardBook {
  /** A phone spoke to this node. */
  readonly speak: (heard: Heard) => void;
  /** What the store says, perhaps from another node. */
  readonly learn: (heard: Heard) => void;
  readonly get: (match: MatchRef) => Heard | undefined;
  /** Words spoken here since the last call, newest of each phone. */
  readonly takeSpoken: () => readonly Heard[];
  readonly forget: (match: MatchRef) => void;
}

const keyOf = ({ academyId, matchId }: MatchRef): string => `${academyId}/${matchId}`;

export const createHeardBook = (): HeardBook => {
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
    takeSpoken: () => {
      const words = [...spoken.values()];
      spoken.clear();
      return words;
    },
    forget: (match) => book.delete(keyOf(match)),
  };
};
