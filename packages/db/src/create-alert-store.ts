import { ok } from "@courtloom/core";
import type { AlertStore } from "./alert-store.ts";
import { addMark } from "./alerts/add-mark.ts";
import { alertsOfMatch, readDayAlerts } from "./alerts/alert-rows.ts";
import { claimNotices } from "./alerts/claim-notices.ts";
import { writeAlerts } from "./alerts/write-alerts.ts";
import { inAcademy } from "./in-academy.ts";
import { orUnavailable } from "./log/or-unavailable.ts";
import type { Db } from "./open-db.ts";

/** Alerts in Postgres. What it answers is committed. */
export function createAlertStore(db: Db): AlertStore {
  return {
    alertsOf: ({ academyId, matchId }) =>
      orUnavailable(async () =>
        ok(await inAcademy(db, academyId, (tx) => alertsOfMatch(tx, academyId, matchId))),
      ),
    writeAlerts: (write) => orUnavailable(async () => ok(await writeAlerts(db, write))),
    dayAlerts: (day) => orUnavailable(async () => ok(await readDayAlerts(db, day))),
    claimNotices: (claim) => orUnavailable(async () => ok(await claimNotices(db, claim))),
    addMark: (mark) => orUnavailable(async () => ok(await addMark(db, mark))),
  };
}
