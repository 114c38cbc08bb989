import {
  type AlertNow,
  breaksOf,
  hasBreakSince,
  reconcileAlerts,
  takenBy,
  type WatchView,
} from "@courtloom/decisions";
import type { LoggedEntry, MatchView } from "@courtloom/match-log";
import type { AlertSaid, StoredAlert } from "./alert-store.ts";
import { watchesSeen } from "./watches-seen.ts";

/** A match's log and its fold. */
export interface Folded {
  readonly view: MatchView;
  readonly entries: readonly LoggedEntry[];
}

const isOver = (view: MatchView): boolean => view.score.over || view.sealed;

const saidOf = (view: MatchView, watch: WatchView, { state, raisedBy }: AlertNow): AlertSaid => {
  const { x, n, offPlan } = watch.match;
  const { sets } = view.score;
  const run = state === "closed" ? undefined : watch.since;
  return {
    match: { x, n, offPlan },
    ...(run ? { since: { x: run.x, n: run.n, set: run.from.set, games: run.from.games } } : {}),
    usual: watch.watch.usual,
    source: watch.watch.source,
    strength: state === "closed" ? 0 : watch.strength,
    set: isOver(view) ? Math.max(1, sets.length) : sets.length + 1,
    isOver: isOver(view),
    isDue: hasBreakSince(view, raisedBy),
    breaks: breaksOf(view),
  };
};

const isSame = (had: StoredAlert, now: AlertNow, said: AlertSaid): boolean =>
  had.state === now.state && JSON.stringify(had.said) === JSON.stringify(said);

const changesOf = (
  { view, entries }: Folded,
  watch: WatchView,
  rows: readonly StoredAlert[],
  atMs: number,
): readonly StoredAlert[] => {
  const { side, rate } = watch;
  const { pos } = view;
  const { version } = watch.watch;
  const { playerId } = view.opened.players[side];
  const now = reconcileAlerts(
    watch,
    rows.map(({ episode, state }) => ({ episode, isWithdrawn: state === "withdrawn" })),
  );
  const byNumber = new Map(rows.map((row) => [row.episode, row]));
  const stated = now.alerts.flatMap((alert): StoredAlert[] => {
    const said = saidOf(view, watch, alert);
    const had = byNumber.get(alert.episode);
    if (had) return isSame(had, alert, said) ? [] : [{ ...had, state: alert.state, pos, said }];
    const raisedPos = view.points.find(({ id }) => id === alert.raisedBy)?.pos ?? pos;
    const key = { matchId: view.matchId, playerId, rate, version, episode: alert.episode };
    const raised = { raisedEntryId: alert.raisedBy, raisedPos, raisedMs: atMs };
    return [{ ...key, side, ...raised, state: alert.state, pos, said }];
  });
  const withdrawn = now.withdrawn.flatMap((episode): StoredAlert[] => {
    const had = byNumber.get(episode);
    if (!had) return [];
    const by = takenBy(entries, had.raisedPos);
    const who = by ? { entryId: by.entry.id, laneId: by.laneId } : {};
    return [{ ...had, state: "withdrawn", pos, withdrawn: { atMs, ...who } }];
  });
  return [...stated, ...withdrawn];
};

/**
 * What the ledger lacks of what the log says now; empty when they agree. A ledger that is of a newer log is left
 * alone: this node has yet to read on. `atMs`: now, by the server's clock. SPEC AL1 to AL3, AL17.
 */
export const alertChanges = (
  folded: Folded,
  rows: readonly StoredAlert[],
  atMs: number,
): readonly StoredAlert[] => {
  const { view } = folded;
  return watchesSeen(view).flatMap((watch) => {
    const { playerId } = view.opened.players[watch.side];
    const own = rows.filter(
      (row) => row.playerId === playerId && row.rate === watch.rate && row.version === watch.watch.version,
    );
    return own.some(({ pos }) => pos > view.pos) ? [] : changesOf(folded, watch, own, atMs);
  });
};
