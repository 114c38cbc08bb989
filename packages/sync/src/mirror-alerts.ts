import type {
  AlertKey,
  AlertNotices,
  Alerts,
  AlertsWatchReply,
  MarkAsked,
  RefusalCode,
} from "@courtloom/protocol";
import { DOWN, PROTOCOL_VERSION, UP } from "@courtloom/protocol/names";
import { alertKeyText } from "./alert-key-text.ts";
import type { Channel } from "./channel.ts";
import { createMarkSender, type MarkStore, memoryMarks, type PendingMark } from "./mark-sender.ts";
import {
  type AlertsState,
  noAlerts,
  openAlertsSession,
  takeAlerts,
  takeAlertsSnapshot,
  takeNotices,
} from "./mirror-alerts-state.ts";
import { deviceDeps, type MirrorDeps } from "./mirror-court.ts";
import { createLink, type MirrorState, type ReadOutcome } from "./mirror-link.ts";

/** A day's alerts as this page knows them, and what was said of them here and is not known to have arrived. */
export interface AlertsMirrorSnapshot {
  readonly state: MirrorState;
  readonly alerts: AlertsState;
  readonly marks: readonly PendingMark[];
  /** Device wall clock when the server was last heard; null when never. */
  readonly lastHeardMs: number | null;
  readonly refusal: RefusalCode | null;
  /** False while there is no connection. */
  readonly reachable: boolean;
}

export interface AlertsMirror {
  readonly get: () => AlertsMirrorSnapshot;
  readonly subscribe: (changed: () => void) => () => void;
  /** Called only when this alert, or what was said of it here, is another one. `text`: `alertKeyText` of its key. */
  readonly subscribeAlert: (text: string, changed: () => void) => () => void;
  /** Says something of an alert; sent until it is acknowledged. */
  readonly mark: (key: AlertKey, mark: MarkAsked) => void;
  /** Forgets a refused mark. */
  readonly dismiss: (id: string) => void;
  readonly close: () => void;
}

export interface AlertsMirrorOptions {
  readonly channel: Channel;
  readonly dayId: string;
  /** Where unsent marks outlive the page. Default: nowhere. */
  readonly kept?: MarkStore;
  readonly deps?: MirrorDeps;
}

/** Marks of one alert, as text: another one when any of them is. */
const marksText = (marks: readonly PendingMark[], text: string): string =>
  JSON.stringify(marks.filter(({ key }) => alertKeyText(key) === text));

/**
 * Follows the alerts of a day: the list, what was done about each, and what this person is told of. Watches again
 * after a reconnect and when the server is silent. SPEC rules AS1 to AS4.
 */
export const createAlertsMirror = ({
  channel,
  dayId,
  kept = memoryMarks(),
  deps = deviceDeps,
}: AlertsMirrorOptions): AlertsMirror => {
  const listeners = new Set<() => void>();
  const alertListeners = new Map<string, Set<() => void>>();
  let alerts = noAlerts;
  let snapshot: AlertsMirrorSnapshot;

  const publish = () => {
    snapshot = {
      state: link.state(),
      alerts,
      marks: sender.pending(),
      lastHeardMs: link.lastHeardMs(),
      refusal: link.refusal(),
      reachable: link.reachable(),
    };
    for (const listener of listeners) listener();
  };
  const tell = (texts: Iterable<string>) => {
    for (const text of texts) for (const listener of alertListeners.get(text) ?? []) listener();
  };
  const take = (next: AlertsState, isList: boolean) => {
    const before = alerts;
    alerts = next;
    if (before !== next) publish();
    const texts = new Set([...before.order, ...next.order]);
    tell([...texts].filter((text) => before.lines.get(text) !== next.lines.get(text)));
    if (isList) sender.listed();
  };
  const marksChanged = () => {
    const before = snapshot.marks;
    publish();
    const touched = [...alertListeners.keys()].filter(
      (text) => marksText(before, text) !== marksText(snapshot.marks, text),
    );
    tell(touched);
  };
  const read = async (fresh: boolean): Promise<ReadOutcome> => {
    if (fresh) alerts = openAlertsSession(alerts);
    const asked = alerts.session;
    const reply = await channel.request<AlertsWatchReply>(UP.alertsWatch, { v: PROTOCOL_VERSION, dayId });
    if (!reply.ok) return reply;
    if (asked === alerts.session) take(takeAlertsSnapshot(alerts, reply), true);
    return "read";
  };
  const link = createLink({ channel, ...deps, read, changed: () => publish() });
  const sender = createMarkSender({
    channel,
    timers: deps.timers,
    kept,
    changed: marksChanged,
    taken: link.ask,
  });
  const listen = <M extends { readonly dayId: string }>(
    event: string,
    step: (state: AlertsState, message: M) => AlertsState,
    isList: boolean,
  ) =>
    channel.on(event, (raw) => {
      const message = raw as M;
      if (message.dayId !== dayId) return;
      take(step(alerts, message), isList);
      link.heard();
    });
  const stops = [
    listen<Alerts>(DOWN.alerts, takeAlerts, true),
    listen<AlertNotices>(DOWN.alertNotices, takeNotices, false),
  ];
  publish();
  link.start();

  return {
    get: () => snapshot,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    subscribeAlert: (text, changed) => {
      const told = alertListeners.get(text) ?? new Set();
      alertListeners.set(text, told.add(changed));
      return () => {
        told.delete(changed);
        if (told.size === 0) alertListeners.delete(text);
      };
    },
    mark: sender.mark,
    dismiss: sender.dismiss,
    close: () => {
      for (const stop of stops) stop();
      sender.close();
      link.close();
      void channel.request(UP.alertsLeave, { v: PROTOCOL_VERSION, id: dayId });
    },
  };
};
