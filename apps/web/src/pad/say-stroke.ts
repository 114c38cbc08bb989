import type { Direction, Ended, LandingDepth, Stroke } from "@courtloom/tennis";

/** What a drawing was understood as, in the trade's words. `lead` is never empty. */
export interface Saying {
  readonly lead: string;
  readonly rest: string;
}

const DIRECTION_WORDS: Readonly<Record<Direction, string>> = {
  line: "Down the line",
  cross: "Cross-court",
  middle: "Middle",
  fromMiddle: "From the middle",
};
const DEPTH_WORDS: Readonly<Record<LandingDepth, string>> = { short: "short", mid: "", deep: "deep" };
const ENDED_WORDS: Readonly<Record<Exclude<Ended, "in">, string>> = {
  net: "net",
  wide: "wide",
  long: "long",
};

const endWords = ({ ended, isEndedCertain, landing }: Stroke): string => {
  if (ended === "in") return landing ? DEPTH_WORDS[landing] : "";
  return isEndedCertain ? ENDED_WORDS[ended] : `near the line: in or ${ENDED_WORDS[ended]}`;
};

const netWords = "near the net: over or net";

/** `undefined` stands for a touch, which says only that the ball was kept. */
export const sayStroke = (stroke: Stroke | undefined): Saying => {
  if (!stroke) return { lead: "Kept", rest: "cross-court or middle" };
  const lead = stroke.direction ? DIRECTION_WORDS[stroke.direction] : "No direction";
  const rest = stroke.ended === "net" && !stroke.isEndedCertain ? netWords : endWords(stroke);
  return { lead, rest };
};

/** The same in one or two words, for a chip. */
export const sayShort = (stroke: Stroke | undefined): string => {
  if (!stroke) return "kept";
  const words = { line: "line", cross: "cross", middle: "middle", fromMiddle: "from mid" } as const;
  return stroke.direction ? words[stroke.direction] : "?";
};
