import type { FigureName } from "@courtloom/decisions";

const WORDS: Readonly<Record<string, string>> = {
  behindBaseline: "behind the baseline",
  insideBaseline: "inside the baseline",
  insideServiceLine: "inside the service line",
  left: "left side",
  middle: "middle",
  right: "right side",
  in: "came in",
  stayed: "stayed back",
  unknown: "not told",
  groundstroke: "groundstrokes",
  return: "returns",
  approach: "approaches",
  passing: "passing shots",
  volley: "volleys",
  overhead: "overheads",
  lob: "lobs",
  drop: "drop shots",
  first: "on a first serve",
  second: "on a second serve",
  opening: "1 to 4 strokes",
  building: "5 to 8 strokes",
  long: "9 strokes or more",
};

/** The second word of a short ball's part is its choice, where "middle" is where it went. */
const CHOICE_WORDS: Readonly<Record<string, string>> = {
  line: "down the line",
  cross: "cross-court",
  middle: "to the middle",
  kept: "kept",
  fromMiddle: "from the middle to a side",
  unknown: "direction not told",
};

const FOLLOWS_A_CHOICE: readonly FigureName[] = [
  "shortLowMissed",
  "shortLowWon",
  "shortHighMissed",
  "shortHighWon",
];

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const builtUpWords = (part: string): string => {
  if (part === "0") return "No ball kept before";
  if (part === "1") return "1 ball kept before";
  return part === "5+" ? "5 balls or more kept before" : `${part} balls kept before`;
};

/** A part of a figure as people say it: "Behind the baseline, left side"; a part without words as it is written. */
export const partWords = (figure: FigureName, part: string): string => {
  if (figure === "builtUp") return builtUpWords(part);
  const hasChoice = FOLLOWS_A_CHOICE.includes(figure);
  const said = part
    .split(".")
    .map((word, place) => (hasChoice && place === 1 ? CHOICE_WORDS[word] : WORDS[word]) ?? word);
  return capital(said.join(", "));
};

const ORDER = Object.keys(WORDS);

const placeOf = (part: string): string =>
  part
    .split(".")
    .map((word) => String(ORDER.indexOf(word) + 1).padStart(2, "0"))
    .join(".");

/** Parts in an order that stays: by place, side and length, and counts by their number. */
export const orderedParts = (parts: readonly string[]): readonly string[] =>
  [...parts].sort((a, b) => placeOf(a).localeCompare(placeOf(b)) || a.localeCompare(b, "en"));
