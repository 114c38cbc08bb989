import type { ByPlayer, Side } from "@courtloom/core";
import type { MatchOpened, Rate } from "@courtloom/match-log";
import { sidakSplit } from "@courtloom/stats";
import type { Tally } from "../tally/tally.ts";
import { tallyCount } from "../tally/tally-count.ts";
import type { WatchDesign } from "./freeze-watch.ts";
import { checkWatchSettings, type WatchedPlayers, type WatchSettings } from "./watch-settings.ts";

const designsOf = (
  opened: MatchOpened,
  side: Side,
  settings: WatchSettings,
  past: readonly Tally[],
): WatchDesign[] => {
  const usualOf = (rate: Rate) => opened.usualRates?.[side][rate];
  const watched = settings.rates.flatMap((rate) => {
    const usual = usualOf(rate);
    return usual ? [{ rate, usual }] : [];
  });
  return watched.map(({ rate, usual }) => ({
    side,
    rate,
    usual,
    pastAttempts: past.map((tally) => tallyCount(tally, rate).n),
    alpha: sidakSplit(settings.alpha, watched.length),
    quiet: settings.quiet,
  }));
};

/**
 * The watches to be frozen into an opening: of each charted own player's rates those with a usual rate, which share the
 * player's false-alarm probability. Doubles, settings that cannot be used and rates that the academy has charted too
 * little of give none. SPEC WA11, WA12.
 */
export const watchDesigns = (
  opened: MatchOpened,
  settings: WatchedPlayers,
  past: ByPlayer<readonly Tally[]>,
): readonly WatchDesign[] =>
  opened.subjects.flatMap((side) => {
    const chosen = settings[side];
    if (chosen === null || !opened.players[side].own) return [];
    const checked = checkWatchSettings(chosen);
    return checked.ok ? designsOf(opened, side, checked.value, past[side]) : [];
  });
