/**
 * What the pad of a signed-in member may show of the plan, as plain JSON.
 *
 *   GET /api/courtside/words?match=ID → 200 `CourtWordsAnswer` | 4xx `CourtsideRefused`; "forbidden" for whoever holds a code
 */
export const COURT_WORDS_PATH = "/api/courtside/words";

/** A coach's own words; each may be empty. */
export interface SaidOnCourt {
  readonly words: string;
  /** For a change of ends. */
  readonly sentence: string;
  readonly question: string;
}

/** Null where the coaching mode in force keeps them from a pad. */
export interface CourtWordsAnswer {
  readonly said: SaidOnCourt | null;
}
