import type { Tile } from "@courtloom/protocol";

export const FILTERS = ["all", "players", "courts", "alerts"] as const;
export type Filter = (typeof FILTERS)[number];

/** What a person wants to see of a board: which courts stand out, and which courts and players are theirs. */
export interface BoardChoice {
  readonly filter: Filter;
  /** Ids of this day's courts. */
  readonly courts: readonly string[];
  /** Ids of players, on whatever day. */
  readonly players: readonly string[];
}

export const EVERYTHING: BoardChoice = { filter: "all", courts: [], players: [] };

const LOUD = ["standing", "easing"];

/**
 * Whether a court stands out under a choice. The others keep their places, quieter; an alert that has not
 * faded keeps its court out of the quiet only where alerts are asked for: the panel names them all. SPEC rule BD43.
 */
export const standsOut = (tile: Tile, { filter, courts, players }: BoardChoice): boolean => {
  switch (filter) {
    case "all":
      return true;
    case "courts":
      return courts.includes(tile.courtId);
    case "players": {
      const ids = tile.staff?.playerIds;
      return ids !== undefined && (players.includes(ids.A) || players.includes(ids.B));
    }
    case "alerts":
      return tile.staff?.alerts?.some(({ state }) => LOUD.includes(state)) ?? false;
  }
};

/** The list with the id in it, or without it. */
export const withId = (ids: readonly string[], id: string, isIn: boolean): readonly string[] => {
  const others = ids.filter((other) => other !== id);
  return isIn ? [...others, id] : others;
};
