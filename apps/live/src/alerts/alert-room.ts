import { alertsToTell, MOST_NOTICES, rankAlerts } from "@courtloom/decisions";
import {
  type AlertKey,
  type AlertLine,
  type AlertNotices,
  type Alerts,
  type AlertsSnapshot,
  DOWN,
} from "@courtloom/protocol";
import type { BoardRoom } from "../rooms/board-room.ts";
import { createSerial } from "../rooms/serial.ts";
import { createThrottle } from "../rooms/tile-throttle.ts";
import { logError, type Runtime } from "../runtime.ts";
import type { MatchRef } from "../store.ts";
import type { Viewer } from "../viewer.ts";
import { isSnoozed } from "./alert-marks.ts";
import type { AlertStore, MembersOf, StaffMember, StoredAlert } from "./alert-store.ts";
import type { DescribeDay, DescribedAlert } from "./describe-day.ts";
import { mayBeTold } from "./may-be-told.ts";

export type StaffPerson = Pick<StaffMember, "memberId" | "role">;

export interface AlertRoomDeps {
  readonly runtime: Runtime;
  readonly store: AlertStore;
  /** The day's board: while alerts are followed, so are its courts. */
  readonly board: BoardRoom;
  readonly membersOf: MembersOf;
  readonly describe: DescribeDay;
  /** What the store has of a match. */
  readonly learn: (match: MatchRef, rows: readonly StoredAlert[]) => void;
}

/** The alerts of one day on this node. SPEC AL22, AL23. */
export interface AlertRoom {
  readonly academyId: string;
  readonly dayId: string;
  /** Subscribes while `still` holds, and tells the person what they were not told yet. */
  readonly watch: (
    viewer: Viewer,
    person: StaffPerson,
    still: () => boolean,
  ) => Promise<AlertsSnapshot | "unknown_day" | "unavailable">;
  readonly unwatch: (viewer: Viewer) => void;
  /** Something may have changed: reads and tells, at most four times a second. */
  readonly touch: () => void;
  /** Reads now, and sends what changed. */
  readonly refresh: () => Promise<void>;
  readonly isQuiet: () => boolean;
  readonly close: () => void;
}

const DAY = "day";

const textOf = (alerts: readonly DescribedAlert[]): string => JSON.stringify(alerts.map(({ line }) => line));

export const createAlertRoom = (academyId: string, dayId: string, deps: AlertRoomDeps): AlertRoom => {
  const { runtime, store, board } = deps;
  const watchers = new Map<Viewer, StaffPerson>();
  const serial = createSerial();
  const silent: Viewer = { send: () => undefined };
  let joining = 0;
  let sent: string | undefined;
  /** What was asked of the ledger last, by person and match: the same is not asked again. */
  const asked = new Map<string, string>();
  let stampedMs = Number.NEGATIVE_INFINITY;

  const stamp = (): number => {
    stampedMs = Math.max(stampedMs + 1, runtime.clock.wallMs());
    return stampedMs;
  };
  const isQuiet = (): boolean => watchers.size === 0 && joining === 0;
  const read = async (): Promise<readonly DescribedAlert[] | undefined> => {
    const rows = await store.dayAlerts({ academyId, dayId });
    if (!rows.ok) return undefined;
    for (const [matchId, alerts] of Map.groupBy(rows.value, (alert) => alert.matchId))
      deps.learn(
        { academyId, matchId },
        alerts.map(({ marks: _, ...alert }) => alert),
      );
    return rankAlerts(await deps.describe(academyId, rows.value));
  };
  const linesFor = (alerts: readonly DescribedAlert[], { role }: StaffPerson): readonly AlertLine[] =>
    alerts.filter(({ coaching }) => mayBeTold(role, coaching)).map(({ line }) => line);
  const sendList = (alerts: readonly DescribedAlert[]): void => {
    const now = textOf(alerts);
    if (now === sent) return;
    sent = now;
    const serverMs = stamp();
    const byRole = new Map<StaffPerson["role"], Alerts>();
    for (const [viewer, person] of watchers) {
      const message = byRole.get(person.role) ?? { dayId, serverMs, alerts: linesFor(alerts, person) };
      byRole.set(person.role, message);
      viewer.send(DOWN.alerts, message);
    }
  };
  const claimIn = async (
    matchId: string,
    recipient: string,
    due: readonly DescribedAlert[],
  ): Promise<readonly AlertKey[]> => {
    const atBreak = Math.max(...due.map(({ alert }) => alert.said.breaks));
    const alerts = due.map(({ line }) => line.key);
    const question = JSON.stringify([atBreak, alerts]);
    const place = `${recipient}/${matchId}`;
    if (asked.get(place) === question) return [];
    const claim = { academyId, matchId, recipient, channel: "app", atBreak, most: MOST_NOTICES } as const;
    const answer = await store.claimNotices({ ...claim, alerts, atMs: runtime.clock.wallMs() });
    // What could not be asked now is asked again with the next look.
    if (!answer.ok) return [];
    asked.set(place, question);
    return answer.value;
  };
  /** What this call, and no other on any node, is to tell one person. */
  const claim = async (
    alerts: readonly DescribedAlert[],
    { memberId: recipient, role }: StaffPerson,
  ): Promise<readonly AlertKey[]> => {
    const told = alertsToTell(
      alerts
        .filter(({ coaching }) => mayBeTold(role, coaching))
        .map((one) => ({
          ...one,
          state: one.alert.state,
          strength: one.alert.said.strength,
          isDue: one.alert.said.isDue,
          isSnoozed: isSnoozed(one.alert),
        })),
    );
    const claimed: AlertKey[] = [];
    for (const [matchId, due] of Map.groupBy(told, ({ alert }) => alert.matchId))
      claimed.push(...(await claimIn(matchId, recipient, due)));
    return claimed;
  };
  const notify = async (alerts: readonly DescribedAlert[]): Promise<void> => {
    // Of several screens of one person the one that came last is told.
    const people = new Map([...watchers].map(([viewer, person]) => [person.memberId, { viewer, person }]));
    for (const { viewer, person } of people.values()) {
      const notices = await claim(alerts, person);
      if (notices.length === 0) continue;
      const message: AlertNotices = { dayId, notices };
      viewer.send(DOWN.alertNotices, message);
    }
  };
  const refresh = (): Promise<void> =>
    serial.run(async () => {
      if (watchers.size === 0) return;
      try {
        const alerts = await read();
        if (!alerts) return;
        sendList(alerts);
        await notify(alerts);
      } catch (error) {
        logError(runtime, "the alerts of a day were not read", { dayId, error });
      }
    });
  const throttle = createThrottle(runtime, () => void refresh());
  const join = async (viewer: Viewer, person: StaffPerson, still: () => boolean) => {
    const [alerts, members] = await Promise.all([read(), deps.membersOf({ academyId })]);
    if (!alerts) return "unavailable";
    if (watchers.size === 0) sent = textOf(alerts);
    if (still()) watchers.set(viewer, person);
    const snapshot: AlertsSnapshot = {
      ok: true,
      dayId,
      serverMs: stamp(),
      alerts: linesFor(alerts, person),
      notices: still() ? await claim(alerts, person) : [],
      members: members.map(({ memberId, displayName }) => ({ memberId, name: displayName })),
    };
    return snapshot;
  };
  const leave = (): void => {
    if (isQuiet()) board.unwatch(silent);
  };
  return {
    academyId,
    dayId,
    watch: async (viewer, person, still) => {
      joining += 1;
      try {
        const isKnown = await board.watch(silent, "staff", () => true);
        return isKnown ? await serial.run(() => join(viewer, person, still)) : "unknown_day";
      } finally {
        joining -= 1;
        leave();
      }
    },
    unwatch: (viewer) => {
      watchers.delete(viewer);
      leave();
    },
    touch: () => {
      if (!isQuiet()) throttle.touch(DAY);
    },
    refresh,
    isQuiet,
    close: throttle.stop,
  };
};
