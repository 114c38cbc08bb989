import { randomUUID } from "node:crypto";
import { err, ok } from "@courtloom/core";
import { and, eq, isNull } from "drizzle-orm";
import { inAcademy, type Tx } from "../in-academy.ts";
import { canonicalJson } from "../log/canonical-json.ts";
import type { Db } from "../open-db.ts";
import type { NewPlanVersion, PlanStore, PlanVersion } from "../plan-store.ts";
import { plan, planVersion } from "../schema/plan.ts";
import { isOwnPlayer } from "./is-own-player.ts";
import { selectVersions } from "./plans.ts";

const ofPlayer = ({ academyId, playerId }: Pick<NewPlanVersion, "academyId" | "playerId">) =>
  and(eq(plan.academyId, academyId), playerId === null ? isNull(plan.playerId) : eq(plan.playerId, playerId));

/** An answer that was lost on its way is asked for again: same person, same content, same place in the order. */
const isSentAgain = (newest: PlanVersion, sent: NewPlanVersion): boolean => {
  const { words, rules, replaces, leavesOut, ruleWords, sentence, question } = newest;
  return (
    newest.version === sent.expected + 1 &&
    newest.savedBy === sent.savedBy &&
    newest.note === sent.note &&
    canonicalJson({ words, rules, replaces, leavesOut, ruleWords, sentence, question }) ===
      canonicalJson(sent.content)
  );
};

const newestOf = async (tx: Tx, of: Pick<NewPlanVersion, "academyId" | "playerId">) =>
  (await selectVersions(tx, ofPlayer(of)))[0];

async function addVersion(tx: Tx, added: NewPlanVersion, planId: string | undefined): Promise<void> {
  const { academyId, playerId, expected, content, note, savedBy } = added;
  const academys = playerId === null ? undefined : await newestOf(tx, { academyId, playerId: null });
  const id = planId ?? randomUUID();
  if (planId === undefined) await tx.orm.insert(plan).values({ academyId, planId: id, playerId });
  await tx.orm.insert(planVersion).values({
    ...content,
    academyId,
    planId: id,
    version: expected + 1,
    onVersion: academys?.version ?? 0,
    note,
    savedBy,
  });
}

/** Rules DB51, DB52, DB54. */
export async function savePlan(db: Db, added: NewPlanVersion): ReturnType<PlanStore["savePlan"]> {
  const { academyId, playerId, expected } = added;
  return inAcademy(db, academyId, async (tx) => {
    // One save of an academy at a time, so that a player's version knows which of the academy's it came after.
    await tx.sql`select pg_advisory_xact_lock(hashtextextended(${`plans of ${academyId}`}, 0))`;
    if (playerId !== null && !(await isOwnPlayer(tx, academyId, playerId))) {
      return err({ code: "unknown_player" });
    }
    const newest = await newestOf(tx, added);
    if (newest && isSentAgain(newest, added)) return ok(newest);
    const version = newest?.version ?? 0;
    if (version !== expected) return err({ code: "stale_plan", version });
    await addVersion(tx, added, newest?.planId);
    const saved = await newestOf(tx, added);
    if (!saved) throw new Error("bug: a version was added and is not there");
    return ok(saved);
  });
}
