import { byPlayer } from "@courtloom/core";
import type { LoggedEntry } from "@courtloom/match-log";

/**
 * The opening without what a pad must not hold, whoever charts on it: usual rates, levels, plans, fit and watches.
 * Score, format, hands and who is charted stay, so that the phone folds the same score. Other entries are facts
 * that people charted and come back as they are. SPEC PR4.
 */
export const redactOpening = (logged: LoggedEntry): LoggedEntry => {
  const { body } = logged.entry;
  if (body.kind !== "MatchOpened") return logged;
  const { usualRates: _rates, plans: _plans, ...kept } = body;
  const players = byPlayer((side) => {
    const { level: _, ...player } = body.players[side];
    return player;
  });
  const bare = { ...kept, players, planVersion: null, fitVersion: null, watches: [] };
  return { ...logged, entry: { ...logged.entry, body: bare } };
};

/** The same for a run of entries; the very same array when nothing in it had to be hidden. */
export const redactEntries = (entries: readonly LoggedEntry[]): readonly LoggedEntry[] =>
  entries.some(({ entry }) => entry.body.kind === "MatchOpened") ? entries.map(redactOpening) : entries;
