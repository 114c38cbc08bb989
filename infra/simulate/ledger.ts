import type { LoggedEntry } from "@courtloom/match-log";

/** What was promised in a schedule, kept apart from everything that is under test. */
export interface Ledger {
  readonly committed: (matchId: string, entries: readonly LoggedEntry[]) => void;
  /** Was this entry in the log on disk at some time, at this place? */
  readonly wasCommitted: (matchId: string, entry: LoggedEntry) => boolean;
  /** Highest pos that a match ever had. */
  readonly highest: (matchId: string) => number;
  /** Has any match this entry, or had it? */
  readonly knows: (entryId: string) => boolean;
  /** A phone showed it as stored. */
  readonly confirmed: (entryId: string) => void;
  /** A phone was told that the server has it. */
  readonly acknowledged: (entryId: string) => void;
  /** Every copy was destroyed by a planned fault. */
  readonly forgive: (entryId: string) => void;
  /** A server told somebody of an alert; both as text. */
  readonly noticed: (person: string, alert: string) => void;
  /** How often each person was told of each alert. */
  readonly notices: () => ReadonlyMap<string, number>;
  readonly promised: () => {
    readonly confirmed: ReadonlySet<string>;
    readonly acknowledged: ReadonlySet<string>;
  };
}

const keyOf = (matchId: string, { pos, laneId, entry }: LoggedEntry): string =>
  `${matchId}/${pos}/${laneId}/${entry.id}`;

export const createLedger = (): Ledger => {
  const places = new Set<string>();
  const ids = new Set<string>();
  const highest = new Map<string, number>();
  const confirmed = new Set<string>();
  const acknowledged = new Set<string>();
  const notices = new Map<string, number>();
  return {
    committed: (matchId, entries) => {
      for (const logged of entries) {
        places.add(keyOf(matchId, logged));
        ids.add(logged.entry.id);
        highest.set(matchId, Math.max(highest.get(matchId) ?? 0, logged.pos));
      }
    },
    wasCommitted: (matchId, logged) => places.has(keyOf(matchId, logged)),
    highest: (matchId) => highest.get(matchId) ?? 0,
    knows: (entryId) => ids.has(entryId),
    confirmed: (entryId) => void confirmed.add(entryId),
    acknowledged: (entryId) => void acknowledged.add(entryId),
    forgive: (entryId) => {
      confirmed.delete(entryId);
      acknowledged.delete(entryId);
    },
    noticed: (person, alert) => {
      const told = `${person} of ${alert}`;
      notices.set(told, (notices.get(told) ?? 0) + 1);
    },
    notices: () => notices,
    promised: () => ({ confirmed, acknowledged }),
  };
};
