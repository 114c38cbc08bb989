import { createContext, useContext } from "react";

/** What all tiles of a board share, told once: a tile does not listen to the whole board for it. */
export interface BoardFacts {
  /** True while what is shown is the past. */
  readonly stale: boolean;
  readonly timeZone: string;
}

export const BoardFactsContext = createContext<BoardFacts>({ stale: false, timeZone: "UTC" });

export const useBoardFacts = (): BoardFacts => useContext(BoardFactsContext);
