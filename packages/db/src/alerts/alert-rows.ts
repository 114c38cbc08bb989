import { and, asc, eq, type SQL } from "drizzle-orm";
import type { AlertKey, MarkedAlert, StoredAlert, StoredMark } from "../alert-store.ts";
import { inAcademy, type Tx } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import { alert, alertMark } from "../schema/alert.ts";
import { match } from "../schema/match.ts";

type Row = typeof alert.$inferSelect;

export const keyText = ({ matchId, playerId, rate, version, episode }: AlertKey): string =>
  JSON.stringify([matchId, playerId, rate, version, episode]);

const withdrawalOf = ({ withdrawnAt, withdrawnEntry, withdrawnLane }: Row): Pick<StoredAlert, "withdrawn"> =>
  withdrawnAt === null
    ? {}
    : {
        withdrawn: {
          atMs: withdrawnAt.getTime(),
          ...(withdrawnEntry === null ? {} : { entryId: withdrawnEntry }),
          ...(withdrawnLane === null ? {} : { laneId: withdrawnLane }),
        },
      };

const toAlert = (row: Row): StoredAlert => ({
  matchId: row.matchId,
  playerId: row.playerId,
  rate: row.rate,
  version: row.version,
  episode: row.episode,
  side: row.side,
  raisedEntryId: row.raisedEntry,
  raisedPos: row.raisedPos,
  raisedMs: row.raisedAt.getTime(),
  state: row.state,
  pos: row.pos,
  said: row.said,
  ...withdrawalOf(row),
});

export const toRow = (academyId: string, stored: StoredAlert): typeof alert.$inferInsert => {
  const { raisedEntryId, raisedMs, withdrawn, ...same } = stored;
  return {
    ...same,
    academyId,
    raisedEntry: raisedEntryId,
    raisedAt: new Date(raisedMs),
    withdrawnAt: withdrawn ? new Date(withdrawn.atMs) : null,
    withdrawnEntry: withdrawn?.entryId ?? null,
    withdrawnLane: withdrawn?.laneId ?? null,
  };
};

/** Alerts of matches that `where` picks. */
const selectAlerts = async ({ orm }: Tx, where: SQL | undefined): Promise<readonly StoredAlert[]> => {
  const rows = await orm
    .select({ row: alert })
    .from(alert)
    .innerJoin(match, and(eq(match.academyId, alert.academyId), eq(match.matchId, alert.matchId)))
    .where(where)
    .orderBy(
      ...[asc(alert.matchId), asc(alert.playerId), asc(alert.rate)],
      ...[asc(alert.version), asc(alert.episode)],
    );
  return rows.map(({ row }) => toAlert(row));
};

export const alertsOfMatch = (tx: Tx, academyId: string, matchId: string): Promise<readonly StoredAlert[]> =>
  selectAlerts(tx, and(eq(alert.academyId, academyId), eq(alert.matchId, matchId)));

/** Rule AL12. */
export const readDayAlerts = (
  db: Db,
  { academyId, dayId }: { readonly academyId: string; readonly dayId: string },
): Promise<readonly MarkedAlert[]> =>
  inAcademy(db, academyId, async (tx) => {
    const alerts = await selectAlerts(tx, and(eq(match.academyId, academyId), eq(match.dayId, dayId)));
    const rows = await tx.orm
      .select({ mark: alertMark })
      .from(alertMark)
      .innerJoin(match, and(eq(match.academyId, alertMark.academyId), eq(match.matchId, alertMark.matchId)))
      .where(and(eq(match.academyId, academyId), eq(match.dayId, dayId)))
      .orderBy(asc(alertMark.n));
    const marks = Map.groupBy(rows, ({ mark }) => keyText(mark));
    return alerts.map((one) => ({
      ...one,
      marks: (marks.get(keyText(one)) ?? []).map(
        ({ mark: { kind, byMember, madeAt, details } }): StoredMark => ({
          kind,
          by: byMember,
          atMs: madeAt.getTime(),
          details,
        }),
      ),
    }));
  });
