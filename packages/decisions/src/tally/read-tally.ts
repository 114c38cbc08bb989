import { err, ok, type Result } from "@courtloom/core";
import type { LevelTally, Tally, TallyCell, TallyCount, TallyLevel } from "./tally.ts";
import { TALLY_LEVELS } from "./tally.ts";

/** `not_tally`: not what was ever written. `newer_version`: written by a later version of this product. */
export type TallyError = "not_tally" | "newer_version";

type Raw = Readonly<Record<string, unknown>>;

const isRecord = (raw: unknown): raw is Raw => typeof raw === "object" && raw !== null && !Array.isArray(raw);

const isNumbers = (raw: unknown, length: number): raw is readonly number[] =>
  Array.isArray(raw) && raw.length === length && raw.every((value) => Number.isInteger(value) && value >= 0);

const isCount = (raw: unknown): raw is TallyCount => isNumbers(raw, 2) && (raw[0] ?? 0) <= (raw[1] ?? 0);
const isCell = (raw: unknown): raw is TallyCell => isNumbers(raw, 6);

const isEach = (raw: unknown, is: (member: unknown) => boolean): boolean =>
  isRecord(raw) && Object.values(raw).every(is);

const isLevel = (raw: unknown): raw is LevelTally =>
  isRecord(raw) && isEach(raw.counts, isCount) && isEach(raw.cells, isCell);

/** Version 1 kept two counts over all levels; which they were charted at is not known any more. */
const upcast = (raw: Raw): Result<Tally, TallyError> => {
  const counts: Record<string, TallyCount> = {};
  for (const name of ["lineMissed", "lineShare"] as const) {
    const count = raw[name];
    const pair = isRecord(count) ? [count.x, count.n] : undefined;
    if (!isCount(pair)) return err("not_tally");
    if (pair[1] > 0) counts[name] = pair;
  }
  const isEmpty = Object.keys(counts).length === 0;
  return ok({ version: 2, levels: isEmpty ? {} : { unknown: { counts, cells: {} } } });
};

/**
 * A tally as it was written, of any version so far. Names of figures that this version does not know are kept: they
 * add up and are read by nobody. SPEC D40.
 */
export const readTally = (raw: unknown): Result<Tally, TallyError> => {
  if (!isRecord(raw)) return err("not_tally");
  if (raw.version === 1) return upcast(raw);
  if (typeof raw.version === "number" && raw.version > 2) return err("newer_version");
  if (raw.version !== 2 || !isRecord(raw.levels)) return err("not_tally");
  const levels: Partial<Record<TallyLevel, LevelTally>> = {};
  for (const level of TALLY_LEVELS) {
    const told = raw.levels[level];
    if (told === undefined) continue;
    if (!isLevel(told)) return err("not_tally");
    levels[level] = { counts: told.counts, cells: told.cells };
  }
  return ok({ version: 2, levels });
};
