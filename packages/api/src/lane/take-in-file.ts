import { ok, type Result } from "@courtloom/core";
import type { ReadLane } from "@courtloom/protocol";
import { MAX_BATCH_ENTRIES } from "@courtloom/protocol/names";
import type { AppendTrouble } from "../api-store.ts";
import { audit } from "../audit.ts";
import { type StaffContext, staffProcedure } from "../procedure.ts";
import { fileInput, readFile } from "./read-file.ts";

/** Why the rest of a lane was not taken; `n` is where it stopped. */
export interface Stop {
  readonly code: AppendTrouble["code"] | "not_open" | "sealed";
  /** The number that is missing, or taken otherwise. */
  readonly n?: number;
}

/** What became of one lane of a file, in the file's order. */
export interface TakenLane {
  /** Entries that are new in the match's log. */
  readonly took: number;
  /** Entries of the file that were there already, or are kept aside as they cannot be read. */
  readonly passedOver: number;
  /** The lane was never opened from a phone: it is kept beside the score. */
  readonly beside: boolean;
  readonly stop?: Stop;
}

/** Stands as the chartist of a lane that no phone ever opened; a file has no names. */
const NOBODY_KNOWN = "From a file";

const stopOf = (trouble: AppendTrouble): Stop => {
  if (trouble.code === "gap") return { code: "gap", n: trouble.expect };
  return trouble.code === "identity_conflict" ? { code: trouble.code, n: trouble.n } : { code: trouble.code };
};

/** Opens a lane that the server never heard of, so that the phone can still go on in it. Rule AP15. */
const openBeside = async (ctx: StaffContext, lane: ReadLane): Promise<Result<boolean, Stop>> => {
  const { academyId, memberId } = ctx.staff;
  const { matchId, laneId, level, staff } = lane;
  const lanes = await ctx.log.lanes({ academyId, matchId });
  if (!lanes.ok) return lanes;
  if (lanes.value.some((each) => each.laneId === laneId)) return ok(false);
  const owner = staff
    ? { kind: "member" as const, id: memberId }
    : { kind: "courtside" as const, id: laneId };
  const opened = await ctx.log.openLane({
    ...{ academyId, matchId, laneId, level, owner, chartist: NOBODY_KNOWN, second: true },
  });
  if (opened.ok) return ok(true);
  const { code } = opened.error;
  // Somebody opened it in this very moment: what follows is theirs to send.
  const isTheirs = code === "other_owner" || code === "lead_taken";
  return { ok: false, error: { code: isTheirs ? "unknown_lane" : code } };
};

const appendLane = async (ctx: StaffContext, lane: ReadLane): Promise<Omit<TakenLane, "beside">> => {
  const { matchId, laneId, items } = lane;
  const at = { academyId: ctx.staff.academyId, matchId, laneId };
  let took = 0;
  for (let from = 0; from < items.length; from += MAX_BATCH_ENTRIES) {
    const appended = await ctx.log.append({ ...at, items: items.slice(from, from + MAX_BATCH_ENTRIES) });
    if (!appended.ok) return { took, passedOver: from - took, stop: stopOf(appended.error) };
    took += appended.value.logged.length;
  }
  return { took, passedOver: items.length - took };
};

const takeInLane = async (ctx: StaffContext, lane: ReadLane): Promise<TakenLane> => {
  const opened = await openBeside(ctx, lane);
  if (!opened.ok) return { took: 0, passedOver: 0, beside: false, stop: opened.error };
  const taken = await appendLane(ctx, lane);
  if (taken.took > 0) await audit(ctx, "lane.takeInFile", lane.matchId);
  return { ...taken, beside: opened.value };
};

/**
 * Appends what a file holds, lane by lane, by the same rules as a phone's batches: what is there is passed over, a
 * gap or a conflict stops its lane. Repeating it, or the phone sending by itself later, changes nothing. Rule AP13.
 */
export const takeInFile = staffProcedure.input(fileInput).mutation(async ({ ctx, input }) => {
  const { lanes } = readFile(input);
  const taken: TakenLane[] = [];
  for (const lane of lanes) taken.push(await takeInLane(ctx, lane));
  return { lanes: taken };
});
