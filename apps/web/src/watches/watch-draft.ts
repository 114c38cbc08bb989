import type { WatchChoice, WatchFile, WatchSettingRow } from "@courtloom/api";
import { checkWatchSettings, DEFAULT_WATCH_SETTINGS, watchSettingProblemText } from "@courtloom/decisions";
import { RATES, type Rate } from "@courtloom/match-log";

/** What somebody is choosing. `isOwn` false: a player as the academy's. */
export interface WatchDraft {
  readonly isOwn: boolean;
  readonly choice: WatchChoice;
}

export const academyChoice = ({ academy }: WatchFile): WatchChoice =>
  academy?.choice ?? DEFAULT_WATCH_SETTINGS;

/** The settings that are edited: the academy's, or those of a player; null while nobody has chosen. */
export const rowOf = (file: WatchFile, playerId: string | null): WatchSettingRow | null =>
  playerId === null
    ? file.academy
    : (file.players.find((player) => player.playerId === playerId)?.setting ?? null);

/** Begins with what holds. */
export const draftOf = (file: WatchFile, playerId: string | null): WatchDraft => {
  const own = rowOf(file, playerId)?.choice ?? null;
  return { isOwn: playerId === null || own !== null, choice: own ?? academyChoice(file) };
};

/** What is saved: null goes back to the academy's. */
export const chosenOf = ({ isOwn, choice }: WatchDraft): WatchChoice | null => (isOwn ? choice : null);

/** A rate is chosen or taken out; the rates keep their order. */
export const toggleRate = (choice: WatchChoice, rate: Rate): WatchChoice => ({
  ...choice,
  rates: RATES.filter((each) => (each === rate) !== choice.rates.includes(each)),
});

/** What has to be mended before it can be saved; undefined when nothing has. */
export const problemOf = (draft: WatchDraft): string | undefined => {
  const choice = chosenOf(draft);
  const checked = choice === null ? undefined : checkWatchSettings(choice);
  return checked && !checked.ok ? watchSettingProblemText(checked.error) : undefined;
};

export const isSameChoice = (a: WatchChoice | null, b: WatchChoice | null): boolean =>
  a === null || b === null
    ? a === b
    : a.alpha === b.alpha && a.quiet === b.quiet && a.rates.join() === b.rates.join();
