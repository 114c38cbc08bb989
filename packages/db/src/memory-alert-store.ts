import { ok } from "@courtloom/core";
import type {
  AlertKey,
  AlertStore,
  MarkedAlert,
  NoticeClaim,
  StoredAlert,
  StoredMark,
} from "./alert-store.ts";
import { noticesLeft } from "./alerts/notices-left.ts";
import type { MatchRef } from "./entry-store.ts";

export interface MemoryAlertStore extends AlertStore {
  /** Makes a match known with its day, as the day desk does in the database. */
  readonly addMatch: (match: MatchRef & { readonly dayId: string | null }) => void;
  /** Every notice that was ever claimed, in order. */
  readonly notices: () => readonly GivenNotice[];
}

export interface GivenNotice extends AlertKey {
  readonly academyId: string;
  readonly recipient: string;
  readonly channel: NoticeClaim["channel"];
  readonly atBreak: number;
}

interface State {
  readonly days: Map<string, string | null>;
  readonly alerts: Map<string, StoredAlert & { readonly academyId: string }>;
  readonly marks: Map<string, StoredMark[]>;
  readonly notices: GivenNotice[];
}

/** What was put in cannot be changed from outside, as on disk. */
const copy = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

const keyOf = (academyId: string, { matchId, playerId, rate, version, episode }: AlertKey): string =>
  JSON.stringify([academyId, matchId, playerId, rate, version, episode]);

const textOrder = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const byKey = (a: AlertKey, b: AlertKey): number =>
  textOrder(a.matchId, b.matchId) ||
  textOrder(a.playerId, b.playerId) ||
  textOrder(a.rate, b.rate) ||
  a.version - b.version ||
  a.episode - b.episode;

const without = ({ academyId: _, ...alert }: StoredAlert & { readonly academyId: string }): StoredAlert =>
  alert;

const alertsOf = ({ alerts }: State, { academyId, matchId }: MatchRef): readonly StoredAlert[] =>
  copy(
    [...alerts.values()]
      .filter((alert) => alert.academyId === academyId && alert.matchId === matchId)
      .map(without)
      .toSorted(byKey),
  );

const write = ({ alerts }: State, academyId: string, alert: StoredAlert): void => {
  const key = keyOf(academyId, alert);
  const had = alerts.get(key);
  if (had && (had.state === "withdrawn" || had.pos > alert.pos)) return;
  const { raisedEntryId, raisedPos, raisedMs, side } = had ?? alert;
  alerts.set(key, copy({ ...alert, academyId, raisedEntryId, raisedPos, raisedMs, side }));
};

const dayAlerts = (state: State, academyId: string, dayId: string): readonly MarkedAlert[] =>
  copy(
    [...state.alerts.values()]
      .filter(
        (alert) =>
          alert.academyId === academyId &&
          state.days.get(JSON.stringify([academyId, alert.matchId])) === dayId,
      )
      .toSorted(byKey)
      .map((alert) => ({ ...without(alert), marks: state.marks.get(keyOf(academyId, alert)) ?? [] })),
  );

const claim = (state: State, asked: NoticeClaim): readonly AlertKey[] => {
  const { academyId, matchId, recipient, channel, atBreak } = asked;
  const mine = state.notices.filter(
    (one) =>
      one.academyId === academyId &&
      one.matchId === matchId &&
      one.recipient === recipient &&
      one.channel === channel,
  );
  const told = new Set(mine.map((one) => keyOf(academyId, one)));
  const isOpen = (key: AlertKey): boolean => {
    const { state: says } = state.alerts.get(keyOf(academyId, key)) ?? {};
    return key.matchId === matchId && (says === "standing" || says === "easing");
  };
  const left = noticesLeft(
    mine.map((one) => one.atBreak),
    asked,
  );
  const claimed = asked.alerts
    .filter((key) => isOpen(key) && !told.has(keyOf(academyId, key)))
    .slice(0, left);
  for (const { playerId, rate, version, episode } of claimed)
    state.notices.push({ academyId, matchId, playerId, rate, version, episode, recipient, channel, atBreak });
  return claimed;
};

/** Alerts in memory, by the same rules as on disk: for tests and simulations. */
export function createMemoryAlertStore(): MemoryAlertStore {
  const state: State = { days: new Map(), alerts: new Map(), marks: new Map(), notices: [] };
  return {
    addMatch: ({ academyId, matchId, dayId }) =>
      void state.days.set(JSON.stringify([academyId, matchId]), dayId),
    notices: () => copy(state.notices),
    alertsOf: async (match) => ok(alertsOf(state, match)),
    writeAlerts: async ({ alerts, ...match }) => {
      for (const alert of alerts) write(state, match.academyId, alert);
      return ok(alertsOf(state, match));
    },
    dayAlerts: async ({ academyId, dayId }) => ok(dayAlerts(state, academyId, dayId)),
    claimNotices: async (asked) => ok(claim(state, asked)),
    addMark: async ({ academyId, key, mark }) => {
      const at = keyOf(academyId, key);
      if (!state.alerts.has(at)) return ok(false);
      state.marks.set(at, [...(state.marks.get(at) ?? []), copy(mark)]);
      return ok(true);
    },
  };
}
