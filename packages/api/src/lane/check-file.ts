import type { LoggedEntry } from "@courtloom/match-log";
import type { ReadLane } from "@courtloom/protocol";
import { failure } from "../errors/failure.ts";
import { type DeskMatch, toDeskMatch } from "../match/desk-match.ts";
import { type StaffContext, staffProcedure } from "../procedure.ts";
import { matchLogSoFar } from "./match-log-so-far.ts";
import { fileInput, readFile } from "./read-file.ts";

/** One lane of a file beside what the server has of it. Counts are entries. */
export interface CheckedLane {
  /** Its place in the file, from 1. */
  readonly no: number;
  /** Null when the academy has no such match. */
  readonly match: DeskMatch | null;
  /** Who charted in it; null when the server never heard of the lane. */
  readonly chartist: string | null;
  readonly entries: number;
  /** Points among them. */
  readonly points: number;
  readonly fresh: number;
  readonly alreadyThere: number;
  /** There already, in another lane. */
  readonly elsewhere: number;
  /** Another entry has their number. */
  readonly conflicting: number;
  /** Cannot be read; kept aside under their number. */
  readonly unreadable: number;
}

type Counts = Omit<CheckedLane, "no" | "match" | "chartist">;
type Verdict = "fresh" | "alreadyThere" | "elsewhere" | "conflicting" | "unreadable";

const countLane = ({ laneId, items }: ReadLane, log: readonly LoggedEntry[]): Counts => {
  const laneOf = new Map(log.map((logged) => [logged.entry.id, logged.laneId]));
  const taken = new Set(log.filter((logged) => logged.laneId === laneId).map(({ entry }) => entry.n));
  const judge = (item: ReadLane["items"][number]): Verdict => {
    if (!("entry" in item)) return "unreadable";
    const there = laneOf.get(item.entry.id);
    if (there !== undefined) return there === laneId ? "alreadyThere" : "elsewhere";
    return taken.has(item.n) ? "conflicting" : "fresh";
  };
  const counts = { fresh: 0, alreadyThere: 0, elsewhere: 0, conflicting: 0, unreadable: 0 };
  for (const item of items) counts[judge(item)] += 1;
  const points = items.filter((item) => "entry" in item && item.entry.body.kind === "PointCharted").length;
  return { entries: items.length, points, ...counts };
};

const checkLane = async (ctx: StaffContext, lane: ReadLane): Promise<Omit<CheckedLane, "no">> => {
  const at = { academyId: ctx.staff.academyId, matchId: lane.matchId };
  const match = await ctx.store.matchCard(at);
  if (match === undefined) return { match: null, chartist: null, ...countLane(lane, []) };
  const lanes = await ctx.log.lanes(at);
  if (!lanes.ok) throw failure(lanes.error.code);
  const chartist = lanes.value.find(({ laneId }) => laneId === lane.laneId)?.chartist ?? null;
  return {
    match: toDeskMatch(match),
    chartist,
    ...countLane(lane, await matchLogSoFar(ctx, lane.matchId)),
  };
};

/** What a file that a pad saved holds, beside what is here already. Writes nothing. Rule AP12. */
export const checkFile = staffProcedure.input(fileInput).mutation(async ({ ctx, input }) => {
  const { writtenMs, lanes } = readFile(input);
  const checked: CheckedLane[] = [];
  for (const lane of lanes) checked.push({ no: checked.length + 1, ...(await checkLane(ctx, lane)) });
  return { writtenMs, lanes: checked };
});
