import type { EstimateRow } from "@courtloom/api";

/** A size as people read it: whole from 1 on, one decimal under it. */
export const sizeWords = (size: number): string => {
  const positive = Math.abs(size);
  return positive >= 0.95 ? String(Math.round(positive)) : String(Math.round(positive * 10) / 10);
};

/** Both ends of an interval whose sign is the same; the smaller one first: "1 and 4". */
const between = ({ low, high }: EstimateRow, scale: number): string => {
  const ends = [Math.abs(low * scale), Math.abs(high * scale)].sort((a, b) => a - b);
  return ends.map(sizeWords).join(" and ");
};

/** "About 3 points fewer in every 10 balls, likely between 1 and 4"; only for what is distinguishable. SPEC PF13. */
export const worthWords = (worth: EstimateRow): string => {
  const more = worth.value > 0 ? "more" : "fewer";
  return `About ${sizeWords(worth.value * 10)} points ${more} in every 10 balls, likely between ${between(worth, 10)}`;
};

/** "+2" or "−3": points in every 10 balls, by a sign that is read as one. */
export const signedWorth = ({ value }: EstimateRow): string =>
  `${value > 0 ? "+" : "−"}${sizeWords(value * 10)}`;

const UNKNOWN = "Not distinguishable from none";

/** What a sum of points went with, as a finding; what cannot be told apart from none says no number. SPEC PF12. */
export const costWords = (points: EstimateRow): string => {
  if (!points.distinguishable) return UNKNOWN;
  const which = points.value > 0 ? "fewer" : "more";
  return `About ${sizeWords(points.value)} points ${which}, likely between ${between(points, 1)}`;
};

/** The same in chances to win one match, in hundredths: 100 is a whole match. */
export const chancesWords = (chances: EstimateRow): string => {
  if (!chances.distinguishable) return UNKNOWN;
  const which = chances.value > 0 ? "fewer" : "more";
  return `About ${sizeWords(chances.value * 100)} in 100 of a match ${which}, likely between ${between(chances, 100)}`;
};
