import type { HistoryFilter } from "@courtloom/api";
import { OPPONENT_LEVELS } from "@courtloom/decisions";
import { CHARTING_LEVELS } from "@courtloom/match-log";
import { SURFACES } from "@courtloom/tennis";

const DATE = /^\d{4}-\d\d-\d\d$/;
const LONGEST = 200;

const oneOf = <T extends string>(values: readonly T[], text: string | null): T | undefined =>
  values.find((value) => value === text);

const dated = (text: string | null): string | undefined => (text && DATE.test(text) ? text : undefined);

const short = (text: string | null): string | undefined =>
  text && text.length <= LONGEST ? text : undefined;

type Read = Pick<URLSearchParams, "get">;

const withoutUnset = <T extends object>(members: { readonly [K in keyof T]: T[K] | undefined }): T =>
  Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined)) as T;

/** The filter that an address names; what it cannot mean is left out. SPEC PF6. */
export const readFilter = (address: Read): HistoryFilter =>
  withoutUnset<HistoryFilter>({
    from: dated(address.get("from")),
    to: dated(address.get("to")),
    opponent: oneOf(OPPONENT_LEVELS, address.get("opponent")),
    surface: oneOf([...SURFACES, "notKnown"] as const, address.get("surface")),
    format: short(address.get("format")),
    level: oneOf(CHARTING_LEVELS, address.get("level")),
    chartist: short(address.get("chartist")),
  });

/** A filter as an address names it; empty for all matches. */
export const writeFilter = (filter: HistoryFilter): URLSearchParams =>
  new URLSearchParams(withoutUnset<Record<string, string>>({ ...filter } as Record<string, string>));
