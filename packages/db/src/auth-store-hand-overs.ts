import postgres from "postgres";
import { type FoundCode, foundColumns, msOf, timeOf } from "./auth-store-columns.ts";
import { insertCourtside, type NewCourtside } from "./auth-store-courtside.ts";
import { inAcademy } from "./in-academy.ts";
import type { Db } from "./open-db.ts";

type Level = "score" | "key" | "every";

interface Holder {
  readonly kind: "member" | "courtside";
  readonly id: string;
}

interface LaneRef {
  readonly academyId: string;
  readonly matchId: string;
  readonly laneId: string;
}

interface NewHandOver extends LaneRef {
  readonly handOverId: string;
  readonly codeHash: string;
  readonly codeId: string;
  readonly owner: Holder;
  readonly level: Level;
  readonly madeMs: number;
  readonly endsMs: number;
}

interface FoundHandOver extends FoundCode, LaneRef {
  readonly handOverId: string;
  readonly chartist: string;
  readonly level: Level;
  readonly leads: boolean;
  readonly endsMs: number;
  readonly withdrawnMs: number | null;
  readonly granted: (Holder & { readonly untilMs: number }) | null;
}

interface FoundRow extends Omit<FoundHandOver, "granted"> {
  readonly grantedKind: Holder["kind"] | null;
  readonly grantedId: string | null;
  readonly untilMs: number | null;
}

interface Accepted {
  readonly academyId: string;
  readonly handOverId: string;
  readonly to: Holder;
  readonly atMs: number;
  readonly untilMs: number;
  readonly session?: NewCourtside | undefined;
}

const HASH_TAKEN = "hand_over_code_hash_key";

/** Written only for the lane that leads, under the match's lock; what was made for it before ends with that. */
const add = async (db: Db, made: NewHandOver): Promise<"added" | "not_lead"> =>
  inAcademy(db, made.academyId, async ({ sql }) => {
    const { academyId, handOverId, matchId, laneId, owner } = made;
    const written = await sql`
      insert into hand_over (academy_id, hand_over_id, code_hash, code_id, match_id, from_lane, level, made_at, expires_at)
      select ${academyId}, ${handOverId}, ${made.codeHash}, ${made.codeId}, h.match_id, h.lead_lane, ${made.level},
             ${timeOf(made.madeMs)}, ${timeOf(made.endsMs)}
      from match_head h
      join lane l on l.academy_id = h.academy_id and l.match_id = h.match_id and l.lane_id = h.lead_lane
      where h.academy_id = ${academyId} and h.match_id = ${matchId} and h.lead_lane = ${laneId} and not h.sealed
        and l.owner_kind = ${owner.kind} and (l.owner_kind = 'courtside' or l.owner_id = ${owner.id})
      for update of h`;
    if (written.count === 0) return "not_lead";
    await sql`
      update hand_over set withdrawn_at = ${timeOf(made.madeMs)}
      where academy_id = ${academyId} and match_id = ${matchId} and from_lane = ${laneId}
        and hand_over_id <> ${handOverId} and withdrawn_at is null`;
    return "added";
  });

/** One of two who come at once waits for the other's row, and finds it granted. */
const accept = async (db: Db, { academyId, handOverId, to, atMs, untilMs, session }: Accepted) =>
  inAcademy(db, academyId, async ({ sql }) => {
    const granted = await sql`
      update hand_over o set granted_at = ${timeOf(atMs)}, granted_until = ${timeOf(untilMs)},
                             granted_kind = ${to.kind}, granted_id = ${to.id}
      from match_head h
      where o.academy_id = ${academyId} and o.hand_over_id = ${handOverId}
        and o.granted_at is null and o.withdrawn_at is null and o.expires_at > ${timeOf(atMs)}
        and h.academy_id = o.academy_id and h.match_id = o.match_id and h.lead_lane = o.from_lane`;
    if (granted.count === 0) return false;
    if (session) await insertCourtside(sql, session);
    return true;
  });

/** Codes by which the lead is handed over. Rules DB20 to DB23. */
export const createAuthHandOvers = (db: Db) => ({
  addHandOver: async (made: NewHandOver): Promise<"added" | "hash_taken" | "not_lead"> => {
    try {
      return await add(db, made);
    } catch (error) {
      if (error instanceof postgres.PostgresError && error.constraint_name === HASH_TAKEN)
        return "hash_taken";
      throw error;
    }
  },

  findHandOver: async (codeHash: string): Promise<FoundHandOver | undefined> => {
    const [row] = await db.sql<FoundRow[]>`
      select ${foundColumns(db)}, hand_over_id as "handOverId", match_id as "matchId", from_lane as "laneId",
             chartist, level, leads, ${msOf(db, "ends_at")} as "endsMs", ${msOf(db, "withdrawn_at")} as "withdrawnMs",
             granted_kind as "grantedKind", granted_id as "grantedId", ${msOf(db, "granted_until")} as "untilMs"
      from find_hand_over(${codeHash})`;
    if (!row) return undefined;
    const { grantedKind: kind, grantedId: id, untilMs, ...found } = row;
    const isGranted = kind !== null && id !== null && untilMs !== null;
    return { ...found, granted: isGranted ? { kind, id, untilMs } : null };
  },

  acceptHandOver: (accepted: Accepted): Promise<boolean> => accept(db, accepted),

  withdrawHandOvers: async (lane: LaneRef & { readonly owner: Holder; readonly atMs: number }) => {
    const { academyId, matchId, laneId, owner, atMs } = lane;
    const changed = await inAcademy(
      db,
      academyId,
      ({ sql }) => sql`
        update hand_over o set withdrawn_at = ${timeOf(atMs)}
        from lane l
        where o.academy_id = ${academyId} and o.match_id = ${matchId} and o.from_lane = ${laneId}
          and o.withdrawn_at is null
          and l.academy_id = o.academy_id and l.match_id = o.match_id and l.lane_id = o.from_lane
          and l.owner_kind = ${owner.kind} and (l.owner_kind = 'courtside' or l.owner_id = ${owner.id})`,
    );
    return changed.count > 0;
  },
});
