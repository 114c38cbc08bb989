import type { MatchFormat } from "@courtloom/tennis";

const FULL = {
  sets: 3,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "same" },
} as const satisfies MatchFormat;

const SHORT = { ...FULL, gamesPerSet: 4, tiebreakAt: 4 } as const satisfies MatchFormat;
const MATCH_TIEBREAK = { kind: "matchTiebreak", to: 10 } as const;

/** Formats that a desk chooses from by name; every other goes in as its own rules. */
export const FORMAT_PRESETS = {
  bestOfThree: { label: "Best of 3 sets", format: FULL },
  bestOfThreeMatchTiebreak: {
    label: "2 sets, match tie-break to 10",
    format: { ...FULL, finalSet: MATCH_TIEBREAK },
  },
  bestOfThreeNoAd: {
    label: "2 sets no-ad, match tie-break to 10",
    format: { ...FULL, noAd: true, finalSet: MATCH_TIEBREAK },
  },
  shortSets: {
    label: "2 short sets to 4, match tie-break to 10",
    format: { ...SHORT, finalSet: MATCH_TIEBREAK },
  },
  shortSetsNoAd: {
    label: "2 short sets to 4 no-ad, match tie-break to 10",
    format: { ...SHORT, noAd: true, finalSet: MATCH_TIEBREAK },
  },
  oneSet: { label: "1 set", format: { ...FULL, sets: 1 } },
  oneShortSet: { label: "1 short set to 4", format: { ...SHORT, sets: 1 } },
  proSet: { label: "1 set to 8", format: { ...FULL, sets: 1, gamesPerSet: 8, tiebreakAt: 8 } },
  tiebreakToTen: {
    label: "1 tie-break to 10",
    format: { ...FULL, sets: 1, tiebreakTo: 10, tieBreakOnly: { to: 10 } },
  },
  bestOfFive: { label: "Best of 5 sets", format: { ...FULL, sets: 5 } },
} as const satisfies Record<string, { readonly label: string; readonly format: MatchFormat }>;

export type FormatPreset = keyof typeof FORMAT_PRESETS;

export const isFormatPreset = (name: string): name is FormatPreset => Object.hasOwn(FORMAT_PRESETS, name);
