import { randomUUID } from "node:crypto";
import { assert } from "@courtloom/core";
import { DESK_LANE, ENTRY_VERSION, type Entry, type EntryBody } from "@courtloom/match-log";
import type postgres from "postgres";
import type { ImportMatch, NewMatch } from "../day-store.ts";
import { inAcademy } from "../in-academy.ts";
import { hashItem } from "../log/hash-item.ts";
import type { Db } from "../open-db.ts";
import { match } from "../schema/match.ts";
import { tally } from "../schema/tally.ts";
import { type MatchContext, type MatchRow, matchRow, readMatchContext } from "./insert-matches.ts";

/** Rows per statement: large enough to be quick, small enough for the 65,535 parameters of one statement. */
const MATCHES_PER_STATEMENT = 500;
const ENTRIES_PER_STATEMENT = 2000;

interface PlacedEntry {
  readonly matchId: string;
  readonly pos: number;
  readonly laneId: string;
  readonly epoch: number;
  readonly entry: Entry;
}

/** Rule DB13. All in one transaction: a failed import leaves nothing. */
export async function importMatches(
  db: Db,
  { academyId, matches }: { readonly academyId: string; readonly matches: readonly ImportMatch[] },
): Promise<void> {
  await inAcademy(db, academyId, async (tx) => {
    const added = matches.map((one) => toNewMatch(academyId, one));
    const context = await readMatchContext(tx, academyId, added);
    const rows = matches.map((one, i) => toRow(one, added[i], context, i + 1));
    for (const part of inParts(rows, MATCHES_PER_STATEMENT)) await tx.orm.insert(match).values(part);
    await insertHeads(tx.sql, academyId, matches);
    for (const part of inParts(matches.flatMap(placeAll), ENTRIES_PER_STATEMENT)) {
      await insertPlaced(tx.sql, academyId, part);
    }
    const tallies = matches.flatMap((one, i) => toTallies(academyId, one, rows[i]?.playedOn ?? ""));
    for (const part of inParts(tallies, ENTRIES_PER_STATEMENT)) await tx.orm.insert(tally).values(part);
  });
}

const inParts = <T>(rows: readonly T[], size: number): T[][] =>
  Array.from({ length: Math.ceil(rows.length / size) }, (_, i) => rows.slice(i * size, (i + 1) * size));

const toNewMatch = (academyId: string, { match: added, opened }: ImportMatch): NewMatch => ({
  ...added,
  academyId,
  matchId: opened.matchId,
});

function toRow(
  one: ImportMatch,
  added: NewMatch | undefined,
  context: MatchContext,
  orderNo: number,
): MatchRow {
  const row = added && matchRow(added, context, orderNo);
  assert(row, `match ${one.opened.matchId} names a day of this academy, or its own date`);
  const last = new Date(one.entries.at(-1)?.wallMs ?? one.openedMs);
  return {
    ...row,
    firstServer: one.opened.firstServer,
    coachingMode: one.opened.coachingMode,
    subjects: [...one.opened.subjects],
    openedAt: new Date(one.openedMs),
    overAt: one.over || one.sealed ? last : null,
    sealedAt: one.sealed ? last : null,
  };
}

const toTallies = (academyId: string, { opened, tallies }: ImportMatch, playedOn: string) =>
  tallies.map((one) => ({
    academyId,
    matchId: opened.matchId,
    playerId: one.playerId,
    playedOn,
    version: one.version,
    tally: one.tally,
  }));

const levelOf = ({ entries }: ImportMatch): string =>
  entries
    .map(({ body }) => (body.kind === "PointCharted" ? body.point.level : undefined))
    .findLast(Boolean) ?? "score";

async function insertHeads(
  sql: postgres.TransactionSql,
  academyId: string,
  matches: readonly ImportMatch[],
): Promise<void> {
  const ids = matches.map(({ opened }) => opened.matchId);
  await sql`
    insert into match_head (academy_id, match_id, pos, epoch, lead_lane, sealed)
    select ${academyId}, new.* from unnest(
      ${ids}::text[], ${matches.map((one) => 1 + one.entries.length + (one.sealed ? 1 : 0))}::int[],
      ${matches.map(() => 1)}::int[], ${matches.map(({ laneId }) => laneId)}::text[],
      ${matches.map(({ sealed }) => String(sealed))}::text[]::bool[]) as new`;
  // Nobody resumes an imported lane: it belongs to the desk.
  await sql`
    insert into lane (academy_id, match_id, lane_id, chartist, owner_kind, owner_id, level, epoch, cursor)
    select ${academyId}, new.id, new.lane, new.chartist, 'desk', 'import', new.level, 1, new.cursor from unnest(
      ${ids}::text[], ${matches.map(({ laneId }) => laneId)}::text[],
      ${matches.map(({ chartist }) => chartist)}::text[], ${matches.map(levelOf)}::text[],
      ${matches.map(({ entries }) => entries.length)}::int[]) as new (id, lane, chartist, level, cursor)`;
  await sql`
    insert into lane (academy_id, match_id, lane_id, chartist, owner_kind, owner_id, level, epoch, cursor)
    select ${academyId}, new.id, ${DESK_LANE}, ${DESK_LANE}, 'desk', ${DESK_LANE}, 'score', 0, new.cursor
    from unnest(${ids}::text[], ${matches.map(({ sealed }) => (sealed ? 2 : 1))}::int[]) as new (id, cursor)`;
}

function placeAll(one: ImportMatch): readonly PlacedEntry[] {
  const { matchId } = one.opened;
  const lastMs = one.entries.at(-1)?.wallMs ?? one.openedMs;
  const desk = (n: number, pos: number, wallMs: number, body: EntryBody): PlacedEntry => {
    const entry: Entry = {
      v: ENTRY_VERSION,
      id: randomUUID(),
      n,
      atMs: Math.max(0, wallMs - one.openedMs),
      wallMs,
      body,
    };
    return { matchId, pos, laneId: DESK_LANE, epoch: 0, entry };
  };
  return [
    desk(1, 1, one.openedMs, one.opened),
    ...one.entries.map((entry, i) => ({ matchId, pos: i + 2, laneId: one.laneId, epoch: 1, entry })),
    ...(one.sealed ? [desk(2, one.entries.length + 2, lastMs, { kind: "MatchSealed" })] : []),
  ];
}

async function insertPlaced(
  sql: postgres.TransactionSql,
  academyId: string,
  placed: readonly PlacedEntry[],
): Promise<void> {
  await sql`
    insert into entry (academy_id, match_id, pos, lane_id, epoch, n, entry_id, hash, entry)
    select ${academyId}, new.match_id, new.pos, new.lane_id, new.epoch, new.n, new.id,
           decode(new.hash, 'hex'), new.entry::json
    from unnest(
      ${placed.map((p) => p.matchId)}::text[], ${placed.map((p) => p.pos)}::int[],
      ${placed.map((p) => p.laneId)}::text[], ${placed.map((p) => p.epoch)}::int[],
      ${placed.map((p) => p.entry.n)}::int[], ${placed.map((p) => p.entry.id)}::text[],
      ${placed.map((p) => hashItem({ n: p.entry.n, entry: p.entry }).hash)}::text[],
      ${placed.map((p) => JSON.stringify(p.entry))}::text[]
    ) as new (match_id, pos, lane_id, epoch, n, id, hash, entry)`;
}
