import type { ScoreState } from "@courtloom/tennis";
import { isBeyond } from "./score-progress.ts";
import type { ViewedPoint } from "./view.ts";

/** Two tellings of one match: what is together in a pair is the same point of the match. */
export interface PointPair {
  readonly lead?: ViewedPoint;
  readonly other?: ViewedPoint;
}

/** One telling: its points in order, and before which of them it says that points were missed. */
export interface PointsTold {
  readonly points: readonly ViewedPoint[];
  readonly missedBefore: ReadonlySet<string>;
  /** It says so after the last one: the score that it states then. */
  readonly missedUntil?: ScoreState;
}

/** Whether two points are known to be one, whatever they say. */
export type IsOne = (lead: ViewedPoint, other: ViewedPoint) => boolean;

/** What it costs to believe that … The numbers only weigh these against each other. */
const COST = {
  /** … one of the two did not chart a point. */
  left: 1,
  /** … nor the next one after it. */
  leftMore: 0.6,
  /** … nor charted what that one says was missed. */
  saidMissed: 0.1,
  /** … one says that points were missed here, and the other neither has them nor says so. */
  unfilled: 0.3,
  /** … one of the two wrote down the wrong winner. */
  winner: 1,
  /** … the two had another score before the point, though nothing between them said so. */
  score: 6,
  /** … they still had another score, after one left out a point or wrote down another winner. */
  drift: 0.05,
  /** … the other began after the lead, or stopped before it, however many points. */
  edge: 0.5,
  /** … they charted different things of one point. */
  serve: 0.05,
} as const;
/** Known to be one: no other way of aligning is ever cheaper. */
const KNOWN = -1_000;

/** The score before a point, as far as two people can be expected to have the same: set, games, points, server. */
const placeOf = ({ sets, games, points, server }: ScoreState): string =>
  `${sets.length} ${games.join("-")} ${points.join("-")} ${server}`;

/** The cheapest way to here, and the step that ended it. `drift`: the two scores may differ from here on. */
interface Way {
  readonly cost: number;
  readonly drift: boolean;
  readonly step?: "pair" | "lead" | "other";
  readonly before?: Way;
}

interface Told {
  readonly point: ViewedPoint;
  readonly place: string;
  /** Points were missed just before it, until this score. */
  readonly missedUntil?: ScoreState;
}

type Gap = "lead" | "other";

/** A stretch that one of two missed is where the other has points of its own. */
const unfilledCost = ({ step }: Way, lead: Told, other: Told): number => {
  const leadAlone = lead.missedUntil && !other.missedUntil && step !== "other";
  const otherAlone = other.missedUntil && !lead.missedUntil && step !== "lead" && step !== undefined;
  return leadAlone || otherAlone ? COST.unfilled : 0;
};

const pairWay = (way: Way, lead: Told, other: Told, isOne: IsOne): Way => {
  const known = isOne(lead.point, other.point) ? KNOWN : 0;
  const samePlace = lead.place === other.place;
  const sameWinner = lead.point.point.winner === other.point.point.winner;
  const sameServe = lead.point.point.serve?.outcome === other.point.point.serve?.outcome;
  const place = samePlace ? 0 : way.drift ? COST.drift : COST.score;
  const cost =
    place + (sameWinner ? 0 : COST.winner) + (sameServe ? 0 : COST.serve) + unfilledCost(way, lead, other);
  return { cost: way.cost + known + cost, drift: !samePlace || !sameWinner, step: "pair", before: way };
};

/** The lead charted before the other began, or after it stopped. */
const edgeWay = (way: Way): Way => ({
  cost: way.cost + (way.step === "lead" ? 0 : COST.edge),
  drift: way.drift,
  step: "lead",
  before: way,
});

/** `said`: whoever left the point out says so there, with the score. */
const leftWay = (way: Way, step: Gap, said: boolean): Way => {
  const again = way.step === step ? COST.leftMore : COST.left;
  return { cost: way.cost + (said ? COST.saidMissed : again), drift: way.drift || !said, step, before: way };
};

const told = ({ points, missedBefore }: PointsTold): readonly Told[] =>
  points.map((point) => ({
    point,
    place: placeOf(point.before),
    ...(missedBefore.has(point.id) ? { missedUntil: point.before } : {}),
  }));

/** Whether the point is one that the other telling says was missed by then. */
const missesBy = (left: Told | undefined, { missedUntil }: Pick<PointsTold, "missedUntil">): boolean =>
  left !== undefined && missedUntil !== undefined && isBeyond(missedUntil, left.point.before);

const cheapest = (ways: readonly (Way | undefined)[]): Way | undefined =>
  ways.reduce((best, way) => (way && (!best || way.cost < best.cost) ? way : best), undefined);

/** The cheapest way through both, row by row of the lead; an edge costs the same whatever its length. */
const lastWay = (leadTold: PointsTold, otherTold: PointsTold, isOne: IsOne): Way => {
  const [lead, other] = [told(leadTold), told(otherTold)];
  let above: readonly Way[] = [];
  for (let i = 0; i <= lead.length; i += 1) {
    const row: Way[] = [];
    const own = lead[i - 1];
    for (let j = 0; j <= other.length; j += 1) {
      const theirs = other[j - 1];
      const [up, left, corner] = [above[j], row[j - 1], above[j - 1]];
      const atEdge = j === 0 || j === other.length;
      const otherMissed = missesBy(own, other[j] ?? otherTold);
      const leadMissed = missesBy(theirs, lead[i] ?? leadTold);
      const way = cheapest([
        own && theirs && corner && pairWay(corner, own, theirs, isOne),
        own && up && (atEdge ? edgeWay(up) : leftWay(up, "lead", otherMissed)),
        theirs && left && leftWay(left, "other", leadMissed),
      ]);
      row.push(way ?? { cost: 0, drift: false });
    }
    above = row;
  }
  return above.at(-1) ?? { cost: 0, drift: false };
};

/**
 * Puts the points of two tellings of one match beside each other, in order, every point of both once: by the
 * score before each, where one says that points were missed by that, and where one lost count, by the winners.
 * Times play no part. Costs the product of the two lengths.
 */
export const alignPoints = (lead: PointsTold, other: PointsTold, isOne: IsOne): readonly PointPair[] => {
  const pairs: PointPair[] = [];
  let [i, j] = [lead.points.length, other.points.length];
  for (let way: Way | undefined = lastWay(lead, other, isOne); way?.step; way = way.before) {
    const [own, theirs] = [lead.points[i - 1], other.points[j - 1]];
    if (way.step !== "other") i -= 1;
    if (way.step !== "lead") j -= 1;
    pairs.push({
      ...(way.step !== "other" && own ? { lead: own } : {}),
      ...(way.step !== "lead" && theirs ? { other: theirs } : {}),
    });
  }
  return pairs.toReversed();
};
