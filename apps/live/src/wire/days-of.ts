import { byPlayer, SIDES } from "@courtloom/core";
import type { MatchCard as DatabaseCard, DayStore as DatabaseDays } from "@courtloom/db";
import { freezeOpening, talliesOf, watchDesigns } from "@courtloom/decisions";
import type { MatchOpened, MatchView } from "@courtloom/match-log";
import type { FitKeeper } from "../fit/fit-keeper.ts";
import type { Log } from "../runtime.ts";
import type { DayStore, MatchCard, MatchRef } from "../store.ts";
import { pastTallies } from "./past-tallies.ts";
import { plansNow } from "./plans-now.ts";
import type { WatchFreezer } from "./watch-freezer.ts";
import { watchesNow } from "./watches-now.ts";

/** The names that a doubles log knows its players by, in order of service. */
const DOUBLES_ORDER = {
  A: ["A1", "B1", "A2", "B2"],
  B: ["B1", "A1", "B2", "A2"],
} as const;

type OpeningDays = Pick<DatabaseDays, "academyTallies" | "plans" | "watchSettings">;

/** What openings need beside the tables. */
export interface OpeningHelp {
  readonly freezer: Pick<WatchFreezer, "freeze">;
  readonly log: Pick<Log, "fault">;
  readonly fits: Pick<FitKeeper, "ask" | "version">;
}

type Designs = ReturnType<typeof watchDesigns>;

/** A match begins without its watches rather than not at all. SPEC WA14. */
const withWatches = async (
  opened: MatchOpened,
  designs: Designs,
  { freezer, log }: OpeningHelp,
): Promise<MatchOpened> => {
  if (designs.length === 0) return opened;
  const frozen = await freezer.freeze(designs);
  if (frozen.ok) return { ...opened, watches: frozen.value };
  // An opening is for good: one that is asked for while the process stops is left to the next process.
  if (frozen.error === "closed") throw new Error("the live server is stopping");
  log.fault(`a match was opened without watches: ${frozen.error}`, { matchId: opened.matchId });
  return opened;
};

/** Until somebody says who won the toss, side A serves first; the pad puts it right with an entry. */
const openingOf = async (days: OpeningDays, card: MatchCard, help: OpeningHelp): Promise<MatchOpened> => {
  const { matchId, format, players, doubles, coachingMode } = card;
  const firstServer = card.firstServer ?? "A";
  const [past, plans, settings, fitVersion] = await Promise.all([
    pastTallies(days, card as DatabaseCard),
    doubles ? undefined : plansNow(days, card),
    doubles ? undefined : watchesNow(days, card),
    doubles ? null : help.fits.version(card.academyId),
  ]);
  const opened = freezeOpening({
    matchId,
    format,
    firstServer,
    doubles,
    coachingMode,
    players: byPlayer((side) => {
      const { playerId, hand, own, level } = players[side];
      return { playerId, hand, own, ...(level === null ? {} : { level }) };
    }),
    ...(doubles ? { doublesOrder: DOUBLES_ORDER[firstServer] } : {}),
    past,
    fitVersion,
    ...(plans ? { plans } : {}),
  });
  return settings ? withWatches(opened, watchDesigns(opened, settings, past.own), help) : opened;
};

/** Writes whether the match is over and, if so, what each charted player did in it. SPEC LV12. */
const settle = async (
  days: DatabaseDays,
  match: MatchRef,
  view: MatchView,
  { fits }: OpeningHelp,
): Promise<void> => {
  const over = view.score.over || view.sealed;
  await days.setMatchOver({ ...match, over });
  if (!over) return;
  const tallies = talliesOf(view);
  for (const side of SIDES) {
    const tally = tallies[side];
    if (!tally) continue;
    const { playerId } = view.opened.players[side];
    const written = await days.writeTally({ ...match, playerId, version: String(tally.version), tally });
    if (!written.ok) throw new Error(`the tally of side ${side} was refused: ${written.error.code}`);
  }
  if (tallies.A || tallies.B) fits.ask(match.academyId);
};

/** The day's tables as the rooms need them, over the database's. */
export const daysOf = (days: DatabaseDays, help: OpeningHelp): DayStore => ({
  matchCard: (match) => days.matchCard(match),
  dayBoard: (day) => days.dayBoard(day),
  openingOf: (card) => openingOf(days, card, help),
  settle: (match, view) => settle(days, match, view, help),
});
