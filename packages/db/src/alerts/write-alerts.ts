import { sql } from "drizzle-orm";
import type { AlertStore, StoredAlert } from "../alert-store.ts";
import { inAcademy } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { alert } from "../schema/alert.ts";
import { alertsOfMatch, toRow } from "./alert-rows.ts";

/** Rules AL10, AL11. Rows in one order, so that two nodes never wait for each other in a ring. */
export const writeAlerts = (
  db: Db,
  { academyId, matchId, alerts }: Parameters<AlertStore["writeAlerts"]>[0],
): Promise<readonly StoredAlert[]> =>
  inAcademy(db, academyId, async (tx) => {
    if (alerts.length > 0) {
      const rows = alerts.map((one) => toRow(academyId, one));
      await tx.orm
        .insert(alert)
        .values(rows.toSorted((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1)))
        .onConflictDoUpdate({
          target: [
            ...[alert.academyId, alert.matchId, alert.playerId],
            ...[alert.rate, alert.version, alert.episode],
          ],
          set: {
            state: sql`excluded.state`,
            pos: sql`excluded.pos`,
            said: sql`excluded.said`,
            withdrawnAt: sql`excluded.withdrawn_at`,
            withdrawnEntry: sql`excluded.withdrawn_entry`,
            withdrawnLane: sql`excluded.withdrawn_lane`,
          },
          setWhere: sql`${alert.state} <> 'withdrawn' and ${alert.pos} <= excluded.pos`,
        });
    }
    return alertsOfMatch(tx, academyId, matchId);
  });
