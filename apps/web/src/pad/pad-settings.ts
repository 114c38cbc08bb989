import type { ChartingLevel } from "@courtloom/match-log";
import { SEAT_CHOICES, type SeatChoice } from "./shown-ends.ts";

export const PAD_THEMES = ["auto", "light", "dark", "sun"] as const;
/** `auto` follows the phone's light or dark setting. */
export type PadTheme = (typeof PAD_THEMES)[number];

/** Levels that the pad charts at. */
export const PAD_LEVELS = ["score", "key", "every"] as const satisfies readonly ChartingLevel[];
export type PadLevel = (typeof PAD_LEVELS)[number];

/** The hand that holds the phone: what its thumb reaches is on its side. */
export const PAD_HANDS = ["right", "left"] as const;
export type PadHand = (typeof PAD_HANDS)[number];

/** What one phone remembers for the next match. */
export interface PadSettings {
  readonly theme: PadTheme;
  readonly seat: SeatChoice;
  readonly level: PadLevel;
  /** The name that was entered last. */
  readonly name: string;
  readonly hand: PadHand;
  /** A tick in the hand, where the device has one. */
  readonly haptics: boolean;
  /** A short tick to hear. */
  readonly sound: boolean;
  /** Single keys of a keyboard act. */
  readonly keys: boolean;
  /** The notice about plain http was read and put away. */
  readonly knowsPlainHttp: boolean;
}

export const USUAL_SETTINGS: PadSettings = {
  theme: "auto",
  seat: "behind",
  level: "key",
  name: "",
  hand: "right",
  haptics: true,
  sound: false,
  keys: true,
  knowsPlainHttp: false,
};

const KEY = "courtloom-pad";

const oneOf = <T extends string>(choices: readonly T[], value: unknown, usual: T): T =>
  choices.find((choice) => choice === value) ?? usual;

const yesOrNo = (value: unknown, usual: boolean): boolean => (typeof value === "boolean" ? value : usual);

/** Settings from what was stored; anything unknown in it falls back to the usual. */
export const parseSettings = (stored: string | null): PadSettings => {
  if (stored === null) return USUAL_SETTINGS;
  try {
    const raw = JSON.parse(stored) as Partial<Record<keyof PadSettings, unknown>> | null;
    return {
      theme: oneOf(PAD_THEMES, raw?.theme, USUAL_SETTINGS.theme),
      seat: oneOf(SEAT_CHOICES, raw?.seat, USUAL_SETTINGS.seat),
      level: oneOf(PAD_LEVELS, raw?.level, USUAL_SETTINGS.level),
      name: typeof raw?.name === "string" ? raw.name.slice(0, 40) : USUAL_SETTINGS.name,
      hand: oneOf(PAD_HANDS, raw?.hand, USUAL_SETTINGS.hand),
      haptics: yesOrNo(raw?.haptics, USUAL_SETTINGS.haptics),
      sound: yesOrNo(raw?.sound, USUAL_SETTINGS.sound),
      keys: yesOrNo(raw?.keys, USUAL_SETTINGS.keys),
      knowsPlainHttp: raw?.knowsPlainHttp === true,
    };
  } catch {
    // Not JSON: written by something else, or cut off. The usual settings are a good start.
    return USUAL_SETTINGS;
  }
};

export const readSettings = (): PadSettings => {
  try {
    return parseSettings(localStorage.getItem(KEY));
  } catch {
    // The browser forbids storage; settings then last as long as the page.
    return USUAL_SETTINGS;
  }
};

/** Answers whether it could be remembered. */
export const saveSettings = (settings: PadSettings): boolean => {
  try {
    localStorage.setItem(KEY, JSON.stringify(settings));
    return true;
  } catch {
    return false;
  }
};
