import { createContext } from "react";

/** What stands beside the score, for the sheets of this match; undefined while nothing does. */
export interface BesidePoints {
  /** Points that differ or are only there. */
  readonly count: number;
  readonly open: () => void;
}

export const BesideContext = createContext<BesidePoints | undefined>(undefined);
