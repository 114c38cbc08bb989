import { and, asc, desc, eq, inArray, isNull, or, type SQL, sql } from "drizzle-orm";
import { inAcademy, type Tx } from "../in-academy.ts";
import type { Db } from "../open-db.ts";
import type { PlanStore, PlanVersion } from "../plan-store.ts";
import { member } from "../schema/academy.ts";
import { plan, planVersion } from "../schema/plan.ts";

const ofPlayer = (playerId: string | null): SQL =>
  playerId === null ? isNull(plan.playerId) : eq(plan.playerId, playerId);

/** Versions that `where` picks, the academy's plan first, each plan's newest first. */
export async function selectVersions({ orm }: Tx, where: SQL | undefined): Promise<readonly PlanVersion[]> {
  const rows = await orm
    .select({ version: planVersion, playerId: plan.playerId, savedByName: member.displayName })
    .from(plan)
    .innerJoin(
      planVersion,
      and(eq(planVersion.academyId, plan.academyId), eq(planVersion.planId, plan.planId)),
    )
    .leftJoin(
      member,
      and(eq(member.academyId, planVersion.academyId), eq(member.memberId, planVersion.savedBy)),
    )
    .where(where)
    .orderBy(sql`${plan.playerId} nulls first`, asc(plan.planId), desc(planVersion.version));
  return rows.map(({ version: { academyId: _, savedAt, ...row }, playerId, savedByName }) => ({
    ...row,
    playerId,
    savedByName,
    savedMs: savedAt.getTime(),
  }));
}

const isNewest = sql`${planVersion.version} = (
  select max(v.version) from plan_version v
  where v.academy_id = ${planVersion.academyId} and v.plan_id = ${planVersion.planId})`;

/** Rule DB53. */
export async function readPlans(
  db: Db,
  { academyId, playerIds }: Parameters<PlanStore["plans"]>[0],
): Promise<readonly PlanVersion[]> {
  const whose = playerIds && or(isNull(plan.playerId), inArray(plan.playerId, [...playerIds]));
  return inAcademy(db, academyId, (tx) =>
    selectVersions(tx, and(eq(plan.academyId, academyId), whose, isNewest)),
  );
}

export async function readPlanVersions(
  db: Db,
  { academyId, playerId }: Parameters<PlanStore["planVersions"]>[0],
): Promise<readonly PlanVersion[]> {
  return inAcademy(db, academyId, (tx) =>
    selectVersions(tx, and(eq(plan.academyId, academyId), ofPlayer(playerId))),
  );
}
