import { SEAT_CHOICES, type SeatChoice } from "../shown-ends.ts";

/** Two courts that one phone charts, by their matches, and where their person sits at each. */
export interface KeptCourts {
  readonly matchIds: readonly [string, string];
  /** The one on the screen. */
  readonly front: string;
  readonly seats: Readonly<Record<string, SeatChoice>>;
}

const KEY = "courtloom-courts-1";

const isText = (value: unknown): value is string => typeof value === "string" && value.length <= 64;

const seatsIn = (value: unknown): Record<string, SeatChoice> => {
  if (typeof value !== "object" || value === null) return {};
  const found = Object.entries(value).flatMap(([matchId, seat]) => {
    const known = SEAT_CHOICES.find((each) => each === seat);
    return known ? [[matchId, known] as const] : [];
  });
  return Object.fromEntries(found);
};

/** What was stored; `undefined` when it is not two courts. */
export const parseCourts = (stored: string | null): KeptCourts | undefined => {
  if (stored === null) return undefined;
  try {
    const raw = JSON.parse(stored) as Partial<Record<keyof KeptCourts, unknown>> | null;
    const [first, second, ...more] = Array.isArray(raw?.matchIds) ? (raw.matchIds as unknown[]) : [];
    if (!isText(first) || !isText(second) || first === second || more.length > 0) return undefined;
    const front = raw?.front === second ? second : first;
    return { matchIds: [first, second], front, seats: seatsIn(raw?.seats) };
  } catch {
    // Cut off, or written by something else: then one court opens, as in the address.
    return undefined;
  }
};

export const readCourts = (): KeptCourts | undefined => {
  try {
    return parseCourts(localStorage.getItem(KEY));
  } catch {
    // The browser forbids storage; two courts then last as long as the page.
    return undefined;
  }
};

/** Keeps two courts, or forgets them. Answers whether it could be remembered. */
export const keepCourts = (courts: KeptCourts | undefined): boolean => {
  try {
    if (courts) localStorage.setItem(KEY, JSON.stringify(courts));
    else localStorage.removeItem(KEY);
    return true;
  } catch {
    return false;
  }
};
