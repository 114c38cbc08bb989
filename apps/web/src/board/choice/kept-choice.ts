import { type BoardChoice, EVERYTHING, FILTERS } from "./board-choice.ts";

/** Of so many days the chosen courts are kept. */
const MOST_DAYS = 10;

/** What a device keeps for one account. Ids alone: a name of a child has no place in a browser's storage. */
export interface KeptChoice {
  readonly filter: BoardChoice["filter"];
  readonly players: readonly string[];
  /** Chosen courts by day, the newest first. */
  readonly days: readonly { readonly dayId: string; readonly courts: readonly string[] }[];
}

const NOTHING: KeptChoice = { filter: EVERYTHING.filter, players: [], days: [] };

const idsOf = (value: unknown): readonly string[] =>
  Array.isArray(value) ? value.filter((id) => typeof id === "string") : [];

const dayOf = (value: unknown): KeptChoice["days"] => {
  if (typeof value !== "object" || value === null || !("dayId" in value) || !("courts" in value)) return [];
  return typeof value.dayId === "string" ? [{ dayId: value.dayId, courts: idsOf(value.courts) }] : [];
};

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    // Written by something else: as good as nothing, and replaced with the next choice.
    return null;
  }
};

/** Reads what was kept; whatever is not readable is as if it had never been chosen. */
export const readKept = (text: string | null): KeptChoice => {
  const value = text === null ? null : parsed(text);
  if (typeof value !== "object" || value === null) return NOTHING;
  const { filter, players, days } = value as Readonly<Record<string, unknown>>;
  return {
    filter: FILTERS.find((known) => known === filter) ?? NOTHING.filter,
    players: idsOf(players),
    days: Array.isArray(days) ? days.flatMap(dayOf).slice(0, MOST_DAYS) : [],
  };
};

export const choiceOn = ({ filter, players, days }: KeptChoice, dayId: string): BoardChoice => ({
  filter,
  players,
  courts: days.find((day) => day.dayId === dayId)?.courts ?? [],
});

/** What is kept once `choice` was made on a day: the filter and players for all days, the courts for this one. */
export const keepChoice = (kept: KeptChoice, dayId: string, choice: BoardChoice): KeptChoice => {
  const others = kept.days.filter((day) => day.dayId !== dayId);
  const days = [{ dayId, courts: choice.courts }, ...others].slice(0, MOST_DAYS);
  return { filter: choice.filter, players: choice.players, days };
};
