import { COURT_WORDS_PATH, type CourtWordsAnswer, type SaidOnCourt } from "./court-words-wire.ts";

/** Well within the time until it is asked again. */
const ANSWER_WITHIN_MS = 4_000;

/** The words that may be shown now; undefined where they may not, and where that is not known. */
export const askCourtWords = async (matchId: string): Promise<SaidOnCourt | undefined> => {
  try {
    const response = await fetch(`${COURT_WORDS_PATH}?match=${encodeURIComponent(matchId)}`, {
      signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
      credentials: "same-origin",
      cache: "no-store",
    });
    if (!response.ok) return undefined;
    const { said } = (await response.json()) as CourtWordsAnswer;
    return said ?? undefined;
  } catch {
    // No connection or no answer in time. The mode may have changed meanwhile: nothing is shown until it is known again.
    return undefined;
  }
};
