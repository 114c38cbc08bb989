import { otherSide } from "@courtloom/core";
import type { EntryBody, TimelineFact } from "@courtloom/match-log";
import type { Mending } from "./mend-context.ts";
import * as mend from "./mend-point.ts";

/** One thing that can be done about a fact. */
export interface FactMend {
  readonly label: string;
  readonly bodies: readonly EntryBody[];
}

const one = (label: string, body: EntryBody): FactMend => ({ label, bodies: [body] });

const pointMends = (row: TimelineFact, { view, names }: Mending): readonly FactMend[] => {
  if (row.fact.kind !== "PointCharted") return [];
  const viewed = view.points.find(({ id }) => id === row.id);
  // As the fold reads it: ends that were mended since are already turned.
  const point = viewed?.point ?? row.fact.point;
  const it = { id: row.id, point };
  const other = otherSide(point.winner);
  const last = point.shots.at(-1);
  return [
    one(`${names[other]} won it`, mend.winnerMended(it, other)),
    ...(last && last.leftOut !== "netCord"
      ? [one("The net cord decided it", mend.lastBallLeftOut(it, "netCord"))]
      : []),
    ...(last && last.leftOut !== "calledOut"
      ? [one("Called out, I saw it in", mend.lastBallLeftOut(it, "calledOut"))]
      : []),
    ...(point.level === "score" ? [] : [one("I did not see it: keep the score only", mend.madeNotSeen(it))]),
    one(`Put in a point before: ${names.A} won it`, mend.pointPutIn(it, "A")),
    one(`Put in a point before: ${names.B} won it`, mend.pointPutIn(it, "B")),
    ...(viewed
      ? [one("Ends were wrong since here", mend.endsSince(row.id, view.endOfA ?? point.endOfA))]
      : []),
  ];
};

/** What can be done about one fact of the match, most likely first. SPEC PD80. */
export const factMends = (row: TimelineFact, mending: Mending): readonly FactMend[] => {
  if (row.voided) return [one("Put it back", mend.putBack(row.id))];
  const server = row.before.server;
  const { names } = mending;
  return [
    ...pointMends(row, mending),
    ...(server
      ? [
          one(
            `My slip: ${names[otherSide(server)]} served since here`,
            mend.serverSince(row.id, otherSide(server)),
          ),
        ]
      : []),
    one(
      row.fact.kind === "PointCharted" ? "Take it out: it was a let or did not count" : "Take it out",
      mend.takenOut(row.id),
    ),
  ];
};
