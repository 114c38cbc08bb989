import { useEffect, useState } from "react";
import { askCourtWords } from "./ask-court-words.ts";
import type { SaidOnCourt } from "./court-words-wire.ts";

/** So long may words stay after the desk has said another mode. */
const ASK_EVERY_MS = 5_000;

/**
 * The words that may be shown now. They are held in this page alone, asked for again every five seconds, and gone
 * without a signal, behind a dark screen and whenever the answer does not come. SPEC CM9.
 */
export const useCourtWords = (matchId: string, hasSignal: boolean): SaidOnCourt | undefined => {
  const [said, setSaid] = useState<SaidOnCourt>();
  useEffect(() => {
    if (!hasSignal) return;
    let asked = 0;
    const ask = async () => {
      asked += 1;
      const mine = asked;
      const answer = document.hidden ? undefined : await askCourtWords(matchId);
      // An older answer than the last question says nothing any more.
      if (mine === asked) setSaid(answer);
    };
    const again = () => void ask();
    again();
    const timer = setInterval(again, ASK_EVERY_MS);
    document.addEventListener("visibilitychange", again);
    return () => {
      asked = -1;
      clearInterval(timer);
      document.removeEventListener("visibilitychange", again);
      setSaid(undefined);
    };
  }, [matchId, hasSignal]);
  return said;
};
