import type { RefusalCode } from "@courtloom/protocol";
import { useEffect, useState } from "react";
import { readCourtside } from "./ask-courtside.ts";
import type { CourtsideMatch } from "./courtside.ts";

/** Who else charts this match, asked for when the server says that somebody does; `undefined` while not known. */
export const useLeader = (match: CourtsideMatch, refusal: RefusalCode | undefined): string | undefined => {
  const [leader, setLeader] = useState(match.charting);
  const taken = refusal === "lead_taken";
  const { matchId } = match;
  useEffect(() => {
    if (!taken) return;
    let wanted = true;
    const ask = async () => {
      const read = await readCourtside();
      if (!wanted || !read.ok) return;
      const { chartist, matches } = read.value;
      const charting = matches.find((each) => each.matchId === matchId)?.charting;
      if (charting !== undefined && charting !== chartist) setLeader(charting);
    };
    void ask();
    return () => {
      wanted = false;
    };
  }, [taken, matchId]);
  return leader;
};
