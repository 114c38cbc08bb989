import { randomUUID } from "node:crypto";
import { err, ok } from "@courtloom/core";
import { and, eq, inArray, isNull, or, type SQL, sql } from "drizzle-orm";
import { inAcademy, type Tx } from "../in-academy.ts";
import { canonicalJson } from "../log/canonical-json.ts";
import type { Db } from "../open-db.ts";
import { member } from "../schema/academy.ts";
import { watchSetting } from "../schema/watch-setting.ts";
import type { NewWatchSetting, WatchChoice, WatchSettingVersion, WatchStore } from "../watch-store.ts";
import { isOwnPlayer } from "./is-own-player.ts";

const isNewest = sql`${watchSetting.version} = (
  select max(v.version) from watch_setting v
  where v.academy_id = ${watchSetting.academyId} and v.player_id is not distinct from ${watchSetting.playerId})`;

const choiceOf = (row: {
  readonly rates: WatchChoice["rates"] | null;
  readonly alpha: number | null;
  readonly quiet: boolean | null;
}): WatchChoice | null =>
  row.rates === null || row.alpha === null || row.quiet === null
    ? null
    : { rates: row.rates, alpha: row.alpha, quiet: row.quiet };

/** The newest versions that `whose` picks, the academy's first. */
async function selectNewest(
  { orm }: Tx,
  academyId: string,
  whose: SQL | undefined,
): Promise<readonly WatchSettingVersion[]> {
  const rows = await orm
    .select({ setting: watchSetting, savedByName: member.displayName })
    .from(watchSetting)
    .leftJoin(
      member,
      and(eq(member.academyId, watchSetting.academyId), eq(member.memberId, watchSetting.savedBy)),
    )
    .where(and(eq(watchSetting.academyId, academyId), whose, isNewest))
    .orderBy(sql`${watchSetting.playerId} nulls first`);
  return rows.map(({ setting, savedByName }) => ({
    playerId: setting.playerId,
    version: setting.version,
    choice: choiceOf(setting),
    savedBy: setting.savedBy,
    savedByName,
    savedMs: setting.savedAt.getTime(),
  }));
}

/** Rule WA17. */
export async function readWatchSettings(
  db: Db,
  { academyId, playerIds }: Parameters<WatchStore["watchSettings"]>[0],
): Promise<readonly WatchSettingVersion[]> {
  const whose =
    playerIds && or(isNull(watchSetting.playerId), inArray(watchSetting.playerId, [...playerIds]));
  return inAcademy(db, academyId, (tx) => selectNewest(tx, academyId, whose));
}

/** An answer that was lost on its way is asked for again: same person, same choice, same place in the order. */
const isSentAgain = (newest: WatchSettingVersion, sent: NewWatchSetting): boolean =>
  newest.version === sent.expected + 1 &&
  newest.savedBy === sent.savedBy &&
  canonicalJson(newest.choice) === canonicalJson(sent.choice);

/** Rules WA17 to WA19. */
export async function saveWatchSetting(
  db: Db,
  added: NewWatchSetting,
): ReturnType<WatchStore["saveWatchSetting"]> {
  const { academyId, playerId, expected, choice, savedBy } = added;
  const whose = playerId === null ? isNull(watchSetting.playerId) : eq(watchSetting.playerId, playerId);
  return inAcademy(db, academyId, async (tx) => {
    await tx.sql`select pg_advisory_xact_lock(hashtextextended(${`watches of ${academyId}`}, 0))`;
    if (playerId !== null && !(await isOwnPlayer(tx, academyId, playerId))) {
      return err({ code: "unknown_player" });
    }
    const [newest] = await selectNewest(tx, academyId, whose);
    if (newest && isSentAgain(newest, added)) return ok(newest);
    const version = newest?.version ?? 0;
    if (version !== expected) return err({ code: "stale_watch", version });
    await tx.orm.insert(watchSetting).values({
      ...{ academyId, settingId: randomUUID(), playerId, version: version + 1, savedBy },
      ...(choice ?? { rates: null, alpha: null, quiet: null }),
    });
    const [saved] = await selectNewest(tx, academyId, whose);
    if (!saved) throw new Error("bug: a version was added and is not there");
    return ok(saved);
  });
}
