import { err, ok, type Result } from "@courtloom/core";
import { academyLogits, DEFAULT_SPREAD, type FitSpread, fitSpread } from "@courtloom/stats";
import { addTallies, sumTallies } from "../tally/add-tallies.ts";
import { readTally } from "../tally/read-tally.ts";
import { EMPTY_TALLY, type Tally } from "../tally/tally.ts";
import { wonByChoice } from "./won-by-choice.ts";

/**
 * What all own players of an academy did together, and how much they differ: what a single player's figures and
 * choices are seen beside. Plain data, kept with a version.
 */
export interface AcademyFit {
  readonly academy: Tally;
  readonly spread: FitSpread;
  /** The spread is the academy's own (15 players or more), not the given one. */
  readonly ownSpread: boolean;
  /** Own players, and matches of one of them, charted at every ball with a choice whose outcome counts. */
  readonly players: number;
  readonly matches: number;
}

interface PlayerTally {
  readonly playerId: string;
  readonly tally: Tally;
}

const hasChoice = (tally: Tally): boolean => wonByChoice(tally).some(([kept, line]) => kept.n + line.n > 0);

/** Fits an academy from the tallies of its own players, each of one match. Takes seconds for many players. SPEC HF12. */
export const fitAcademy = (rows: readonly PlayerTally[]): AcademyFit => {
  const byPlayer = new Map<string, Tally>();
  for (const { playerId, tally } of rows) {
    byPlayer.set(playerId, addTallies(byPlayer.get(playerId) ?? EMPTY_TALLY, tally));
  }
  const academy = sumTallies(byPlayer.values());
  const players = [...byPlayer.values()].map(wonByChoice);
  const known = players.filter((counts) => counts.some(([kept, line]) => kept.n + line.n > 0));
  const spread = fitSpread(academyLogits(wonByChoice(academy)), known);
  return {
    academy,
    spread,
    ownSpread: spread !== DEFAULT_SPREAD,
    players: known.length,
    matches: rows.filter(({ tally }) => hasChoice(tally)).length,
  };
};

const isRecord = (raw: unknown): raw is Readonly<Record<string, unknown>> =>
  typeof raw === "object" && raw !== null;
const isSpread = (raw: unknown): raw is FitSpread =>
  isRecord(raw) &&
  [raw.player, raw.situation, raw.choice].every((value) => typeof value === "number" && value > 0);
const isCount = (raw: unknown): raw is number => Number.isInteger(raw) && Number(raw) >= 0;

/** A fit as it was kept; refused where it is none. */
export const readAcademyFit = (raw: unknown): Result<AcademyFit, "not_fit"> => {
  if (!isRecord(raw)) return err("not_fit");
  const { spread, ownSpread, players, matches } = raw;
  const academy = readTally(raw.academy);
  if (!academy.ok || !isSpread(spread) || typeof ownSpread !== "boolean") return err("not_fit");
  if (!isCount(players) || !isCount(matches)) return err("not_fit");
  return ok({ academy: academy.value, spread, ownSpread, players, matches });
};
