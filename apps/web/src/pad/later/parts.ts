import { makePartSource } from "./part-source.ts";

export const MEND_SHEETS = makePartSource(async () => (await import("../mend/mend-sheets.tsx")).MendSheets);
export const MENDED_POINT = makePartSource(
  async () => (await import("../mend/mended-point.tsx")).MendedPoint,
);
export const MERGE_SHEET = makePartSource(async () => (await import("../second/merge-sheet.tsx")).MergeSheet);
export const KEY_MAP_SHEET = makePartSource(
  async () => (await import("../keys/key-map-sheet.tsx")).KeyMapSheet,
);
export const HAND_OVER_SHEET = makePartSource(
  async () => (await import("../hand-over/hand-over-sheet.tsx")).HandOverSheet,
);

/** Of no use without a signal, and to nobody but staff: not among those that are kept. */
export const COURT_WORDS = makePartSource(
  async () => (await import("../court-words/court-words.tsx")).CourtWords,
);

/** Fetches every part that is of use without a signal; resolves whether all are here. */
export const fetchParts = async (): Promise<boolean> => {
  const parts = [MEND_SHEETS, MENDED_POINT, MERGE_SHEET, KEY_MAP_SHEET, HAND_OVER_SHEET];
  const here = await Promise.all(parts.map((part) => part.fetchNow()));
  return here.every(Boolean);
};
