import { type ReactNode, useMemo } from "react";
import { NoticeRegion } from "./notices/notice-region.tsx";
import { NoticeToolsContext } from "./notices/notice-tools.ts";
import type { OpenedAlerts } from "./open-alerts.ts";
import { AlertsContext, type AlertsPlace } from "./use-alerts.ts";

export interface AlertsProviderProps {
  /** Null where there are none: on a public wall, and for a match outside a day. */
  readonly alerts: OpenedAlerts | null;
  readonly timeZone: string;
  readonly children: ReactNode;
}

/** Gives a page its alerts, and the notices over its foot. */
export function AlertsProvider({ alerts, timeZone, children }: AlertsProviderProps) {
  const place = useMemo(
    (): AlertsPlace | null => alerts && { mirror: alerts.mirror, memberId: alerts.memberId, timeZone },
    [alerts, timeZone],
  );
  if (alerts === null) return children;
  return (
    <AlertsContext value={place}>
      <NoticeToolsContext value={alerts.notices}>
        {children}
        <NoticeRegion />
      </NoticeToolsContext>
    </AlertsContext>
  );
}
