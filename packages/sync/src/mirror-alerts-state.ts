import type {
  AlertKey,
  AlertLine,
  AlertMember,
  AlertNotices,
  Alerts,
  AlertsSnapshot,
} from "@courtloom/protocol";
import { alertKeyText } from "./alert-key-text.ts";

/** A day's alerts. Pure data; alerts are held by the text of their key, in the order that the server gave. */
export interface AlertsState {
  /** The subscription that brought what is held. */
  readonly session: number;
  /** Server's stamp of the list; 0 before the first. */
  readonly serverMs: number;
  readonly order: readonly string[];
  /** A line keeps its identity while nothing of it changes. */
  readonly lines: ReadonlyMap<string, AlertLine>;
  readonly members: readonly AlertMember[];
  /** Alerts that this person was told of since the page was opened, each once, in order. */
  readonly told: readonly AlertKey[];
}

export const noAlerts: AlertsState = {
  session: 0,
  serverMs: 0,
  order: [],
  lines: new Map(),
  members: [],
  told: [],
};

/** A new subscription begins: its first list replaces what is held, whatever its stamp. */
export const openAlertsSession = (state: AlertsState): AlertsState => ({
  ...state,
  session: state.session + 1,
  serverMs: 0,
});

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

const takeLines = (state: AlertsState, serverMs: number, alerts: readonly AlertLine[]): AlertsState => {
  if (serverMs < state.serverMs) return state;
  const lines = new Map<string, AlertLine>();
  for (const line of alerts) {
    const text = alertKeyText(line.key);
    const held = state.lines.get(text);
    lines.set(text, held && same(held, line) ? held : line);
  }
  const order = [...lines.keys()];
  const isSame = same(order, state.order) && order.every((text) => lines.get(text) === state.lines.get(text));
  if (isSame) return { ...state, serverMs };
  return { ...state, serverMs, lines, order: same(order, state.order) ? state.order : order };
};

const takeTold = (state: AlertsState, notices: readonly AlertKey[]): AlertsState => {
  const held = new Set(state.told.map(alertKeyText));
  const fresh = notices.filter((key) => !held.has(alertKeyText(key)));
  return fresh.length === 0 ? state : { ...state, told: [...state.told, ...fresh] };
};

/** Takes the answer to a watch. An alert that it does not name is gone. */
export const takeAlertsSnapshot = (state: AlertsState, reply: AlertsSnapshot): AlertsState => {
  const next = takeTold(takeLines(state, reply.serverMs, reply.alerts), reply.notices);
  return same(next.members, reply.members) ? next : { ...next, members: reply.members };
};

/** Takes a changed list; one older than what is held is dropped. */
export const takeAlerts = (state: AlertsState, { serverMs, alerts }: Alerts): AlertsState =>
  takeLines(state, serverMs, alerts);

/** Takes what this person is told of; what was told already is not told again. */
export const takeNotices = (state: AlertsState, { notices }: AlertNotices): AlertsState =>
  takeTold(state, notices);
