import type { Side } from "@courtloom/core";
import { alignPoints, type PointPair, type PointsTold } from "./align-points.ts";
import type { EntryAmended, EntryInserted, LoggedEntry, PointCharted } from "./entry.ts";
import { foldLog } from "./fold.ts";
import { logOfLane } from "./log-of-lane.ts";
import { chartsMore, keepsSubjects, type PointDifference, pointDifferences } from "./point-differences.ts";
import { isBeyond } from "./score-progress.ts";
import { type TimelineFact, timelineOf } from "./timeline.ts";
import type { TrailFact } from "./trail.ts";
import type { MatchView, ViewedPoint } from "./view.ts";

export const LANE_ROW_KINDS = ["same", "differs", "leadOnly", "laneOnly"] as const;
export type LaneRowKind = (typeof LANE_ROW_KINDS)[number];

/** One point of the match as the lead and another lane have it. */
export interface LaneRow {
  readonly kind: LaneRowKind;
  /** As it counts in the score; absent in `laneOnly`. */
  readonly lead?: ViewedPoint;
  /** As the other lane tells it; absent in `leadOnly`. */
  readonly other?: ViewedPoint;
  /** Empty unless `differs`. */
  readonly differences: readonly PointDifference[];
  /** The other lane charted more of it than the lead did. */
  readonly chartsMore: boolean;
  /** The correction that puts the other lane's saying into the score, where it would change something. */
  readonly merge?: EntryAmended | EntryInserted;
  /** The correction that took the other lane's saying over, where one did; voiding it undoes that. */
  readonly mergedBy?: string;
}

export interface LaneComparison {
  readonly laneId: string;
  /** `second`: opened to chart beside the lead; `late`: it led, and went on after somebody took over. */
  readonly role: "second" | "late";
  /** In the match's order, from the lane's first point to its last. */
  readonly rows: readonly LaneRow[];
  readonly counts: Readonly<Record<LaneRowKind, number>>;
  /** Points that the lane charted beside the score. */
  readonly pointCount: number;
}

/** A lane's telling beside the lead's, and which entries in it are its own beside the score. */
interface Telling {
  readonly view: MatchView;
  readonly facts: ReadonlyMap<string, TrailFact>;
  readonly beside: ReadonlySet<string>;
  readonly leadFacts: ReadonlyMap<string, TrailFact>;
}

/** The entry that says what the fact says now: its own, or the amendment that holds. */
const sayingId = ({ id, sayings }: TrailFact): string => sayings?.findLast(({ voided }) => !voided)?.id ?? id;

/** Every entry that said something of a fact. */
const saysOf = (fact: TrailFact | undefined, id: string): readonly string[] => [
  id,
  ...(fact?.sayings ?? []).map((saying) => saying.id),
];

const besideIds = ({ trail }: MatchView, laneId: string): ReadonlySet<string> =>
  new Set([
    ...trail.second.filter((each) => each.laneId === laneId).map(({ id }) => id),
    ...trail.refused.filter((r) => r.laneId === laneId && r.reason === "notLead").map(({ id }) => id),
  ]);

/**
 * Before which fact of the lead a point goes that only the other lane has: before a stated score that is beyond
 * it, since that says what nobody had charted until then, or before the match's end; else before the next point.
 */
const placeFor = (
  point: ViewedPoint,
  timeline: readonly TimelineFact[],
  previous: string | undefined,
  next: string | undefined,
): string | undefined => {
  const from = previous === undefined ? 0 : timeline.findIndex(({ id }) => id === previous) + 1;
  const to = next === undefined ? timeline.length : timeline.findIndex(({ id }) => id === next);
  const stops = timeline.slice(from, to).find(({ fact, voided, setAside, after }) => {
    if (voided || setAside) return false;
    return fact.kind === "MatchEnded" || (fact.kind === "ScoreStated" && isBeyond(after, point.before));
  });
  return stops?.id ?? next;
};

/** The other lane's point as the lead takes it: balls of players whom the lead did not chart stay out. */
const taken = (other: ViewedPoint, subjects: readonly Side[]): PointCharted => {
  if (keepsSubjects({ subjects }, other)) return { kind: "PointCharted", point: other.point };
  const { winner, seat, endOfA, serve } = other.point;
  const point = { winner, level: "score", seat, endOfA, shots: [], ...(serve ? { serve } : {}) } as const;
  return { kind: "PointCharted", point };
};

/** The points of a telling, and where it says that some were missed. */
const pointsTold = (view: MatchView, timeline: readonly TimelineFact[]): PointsTold => {
  const missedBefore = new Set<string>();
  let missed = false;
  for (const { id, fact, voided, setAside } of timeline) {
    if (voided || setAside) continue;
    if (fact.kind === "ScoreStated") missed ||= fact.missed;
    if (fact.kind !== "PointCharted") continue;
    if (missed) missedBefore.add(id);
    missed = false;
  }
  return { points: view.points, missedBefore, ...(missed ? { missedUntil: view.score } : {}) };
};

const rowsOf = (
  pairs: readonly PointPair[],
  view: MatchView,
  timeline: readonly TimelineFact[],
  telling: Telling,
): readonly LaneRow[] => {
  return pairs.map(({ lead, other }, i): LaneRow => {
    if (!other) return { kind: "leadOnly", ...(lead ? { lead } : {}), differences: [], chartsMore: false };
    const fact = telling.facts.get(other.id);
    const from = fact ? sayingId(fact) : other.id;
    if (!lead) {
      const previous = pairs.slice(0, i).findLast((pair) => pair.lead)?.lead;
      const next = pairs.slice(i).find((pair) => pair.lead)?.lead;
      const before = placeFor(other, timeline, previous?.id, next?.id);
      const subjects = (previous ?? next)?.subjects ?? view.subjects;
      const place = before === undefined ? {} : { before };
      const merge = { kind: "EntryInserted", ...place, fact: taken(other, subjects), from } as const;
      return { kind: "laneOnly", other, differences: [], chartsMore: false, merge };
    }
    const differences = pointDifferences(lead, other);
    const more = chartsMore(lead, other);
    const to = taken(other, lead.subjects);
    const merge = { kind: "EntryAmended", target: lead.id, to, from } as const;
    const mine = telling.leadFacts.get(lead.id);
    const isMerged = mine?.from !== undefined && saysOf(fact, other.id).includes(mine.from);
    const kind = differences.length > 0 ? "differs" : "same";
    return {
      kind,
      lead,
      other,
      differences,
      chartsMore: more,
      ...(differences.length > 0 || more ? { merge } : {}),
      ...(mine && isMerged ? { mergedBy: sayingId(mine) } : {}),
    };
  });
};

/** From the lane's first point to its last: what the lead charted while nobody charted here is not compared. */
const trimmed = (rows: readonly LaneRow[]): readonly LaneRow[] => {
  const first = rows.findIndex(({ kind }) => kind !== "leadOnly");
  const last = rows.findLastIndex(({ kind }) => kind !== "leadOnly");
  return first < 0 ? [] : rows.slice(first, last + 1);
};

const compare = (view: MatchView, telling: Telling): readonly LaneRow[] => {
  const isOne = (lead: ViewedPoint, other: ViewedPoint): boolean => {
    const source = telling.leadFacts.get(lead.id)?.from;
    const ids = saysOf(telling.facts.get(other.id), other.id);
    return lead.id === other.id || (source !== undefined && ids.includes(source));
  };
  const timeline = timelineOf(view);
  const other = pointsTold(telling.view, timelineOf(telling.view));
  const pairs = alignPoints(pointsTold(view, timeline), other, isOne);
  const rows = rowsOf(pairs, view, timeline, telling);
  // What both have from before the lead was taken is no comparison, unless the lane said it anew since.
  const isBeside = ({ other }: LaneRow): boolean => {
    const fact = other && telling.facts.get(other.id);
    return fact === undefined || telling.beside.has(sayingId(fact));
  };
  return trimmed(rows.filter(isBeside));
};

/** Lanes that have something beside the score, in the order of their first entry there. */
export const lanesBeside = ({ trail }: MatchView): readonly string[] => [
  ...new Set(
    [...trail.second, ...trail.refused.filter(({ reason }) => reason === "notLead")].map((e) => e.laneId),
  ),
];

/**
 * Another lane's points beside those that count, point by point. A pure function of the log: what was merged is
 * the same afterwards, and a merge that is voided differs again. `view`: the fold of `entries`. Undefined when the
 * lane's telling does not fold. SPEC L22 to L25.
 */
export const compareLanes = (
  entries: readonly LoggedEntry[],
  view: MatchView,
  laneId: string,
): LaneComparison | undefined => {
  const told = foldLog(logOfLane(entries, laneId));
  if (!told.ok) return undefined;
  const facts = new Map(told.value.trail.facts.map((fact) => [fact.id, fact]));
  const beside = besideIds(view, laneId);
  const leadFacts = new Map(view.trail.facts.map((fact) => [fact.id, fact]));
  const rows = compare(view, { view: told.value, facts, beside, leadFacts });
  const countOf = (kind: LaneRowKind): number => rows.filter((row) => row.kind === kind).length;
  const role = view.trail.second.some((each) => each.laneId === laneId) ? "second" : "late";
  const counts = {
    same: countOf("same"),
    differs: countOf("differs"),
    leadOnly: countOf("leadOnly"),
    laneOnly: countOf("laneOnly"),
  };
  return { laneId, role, rows, counts, pointCount: rows.filter(({ other }) => other).length };
};
