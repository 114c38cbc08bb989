/** A score with the dash that is read between numbers: "6-4 30-15" becomes "6–4 30–15". */
export const withDashes = (score: string): string => score.replaceAll("-", "–");
