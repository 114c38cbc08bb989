import type { AlertLine } from "@courtloom/protocol";
import {
  type AlertsMirror,
  type AlertsMirrorSnapshot,
  alertKeyText,
  type PendingMark,
} from "@courtloom/sync";
import { createContext, useCallback, useContext, useSyncExternalStore } from "react";
import { rankAlerts } from "./rank-alerts.ts";
import { isOpen } from "./state-words.ts";

/** What everything about alerts on a page shares. */
export interface AlertsPlace {
  readonly mirror: AlertsMirror;
  /** Who looks. */
  readonly memberId: string;
  /** The academy's. */
  readonly timeZone: string;
}

/** Null where no alerts are shown: on a public wall. */
export const AlertsContext = createContext<AlertsPlace | null>(null);

export const useAlertsPlace = (): AlertsPlace => {
  const place = useContext(AlertsContext);
  if (place === null) throw new Error("bug: a part of the alerts is outside of them");
  return place;
};

const never = () => () => {};

/** A value picked from the alerts; drawn again only when it is another one. `pick` answers something of lasting identity. */
export const useAlerts = <T>(pick: (snapshot: AlertsMirrorSnapshot) => T): T => {
  const { mirror } = useAlertsPlace();
  const read = () => pick(mirror.get());
  return useSyncExternalStore(mirror.subscribe, read, read);
};

/** One alert, drawn again when it or what was said of it here changes, and for no other. SPEC rule AS20. */
export const useAlert = (
  text: string,
): { readonly line: AlertLine | undefined; readonly marks: readonly PendingMark[] } => {
  const { mirror } = useAlertsPlace();
  const subscribe = useCallback(
    (changed: () => void) => mirror.subscribeAlert(text, changed),
    [mirror, text],
  );
  const marksOf = () => mirror.get().marks.filter(({ key }) => alertKeyText(key) === text);
  const readLine = () => mirror.get().alerts.lines.get(text);
  const line = useSyncExternalStore(subscribe, readLine, readLine);
  const readMarks = () => JSON.stringify(marksOf());
  useSyncExternalStore(subscribe, readMarks, readMarks);
  return { line, marks: marksOf() };
};

const BETWEEN = " ";

/** Keys of the alerts, ranked, as texts; of one match alone where one is named. */
export const useRankedAlerts = (matchId?: string): readonly string[] => {
  const ids = useAlerts(({ alerts }) =>
    rankAlerts([...alerts.lines.values()])
      .filter(({ key }) => matchId === undefined || key.matchId === matchId)
      .map(({ key }) => alertKeyText(key))
      .join(BETWEEN),
  );
  return ids === "" ? [] : ids.split(BETWEEN);
};

/** How many alerts are open. */
export const useOpenCount = (): number =>
  useAlerts(({ alerts }) => [...alerts.lines.values()].filter(isOpen).length);

/** What the gravest standing alert of a match is of, and whether everything that stands there is snoozed. */
export interface StandingAlert {
  readonly rate: AlertLine["key"]["rate"];
  readonly snoozed: boolean;
}

const standingOf = (snapshot: AlertsMirrorSnapshot, matchId: string | null): StandingAlert | undefined => {
  const lines = [...snapshot.alerts.lines.values()].filter(
    ({ key, state }) => key.matchId === matchId && state === "standing",
  );
  const awake = lines.filter(({ marks }) => marks.snoozed === undefined);
  const first = rankAlerts(awake.length > 0 ? awake : lines)[0];
  return first && { rate: first.key.rate, snoozed: awake.length === 0 };
};

/** For a tile: undefined without a standing alert, and where no alerts are shown. Compared by value. */
export const useStandingAlert = (matchId: string | null): StandingAlert | undefined => {
  const mirror = useContext(AlertsContext)?.mirror;
  const read = () => (mirror ? JSON.stringify(standingOf(mirror.get(), matchId)) : undefined);
  const text = useSyncExternalStore(mirror?.subscribe ?? never, read, read);
  return text === undefined ? undefined : (JSON.parse(text) as StandingAlert);
};
