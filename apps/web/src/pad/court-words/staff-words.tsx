import type { ScoreState } from "@courtloom/tennis";
import { useEffect, useState } from "react";
import { COURT_WORDS } from "../later/parts.ts";

export interface StaffWordsProps {
  readonly matchId: string;
  readonly score: ScoreState;
  readonly hasPoints: boolean;
  /** No ball of the next point is charted yet. */
  readonly isBetween: boolean;
  readonly hasSignal: boolean;
}

/** Fetches the part that asks for the plan's words; only the pad of a signed-in member has this. */
export const StaffWords = (props: StaffWordsProps) => {
  const [, setHere] = useState(false);
  const { hasSignal } = props;
  useEffect(() => {
    if (hasSignal) void COURT_WORDS.fetchNow().then(setHere);
  }, [hasSignal]);
  const Part = COURT_WORDS.get();
  return Part ? <Part {...props} /> : null;
};
