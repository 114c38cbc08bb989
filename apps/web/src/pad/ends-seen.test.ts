import type { Side } from "@courtloom/core";
import { readShots } from "@courtloom/decisions";
import {
  type Entry,
  type EntryBody,
  foldLog,
  type LoggedEntry,
  type Point,
  type Shot,
} from "@courtloom/match-log";
import { type EndSeen, seenFrom, turnEnds } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import { firstPointToTurn, hasSeenEnds } from "./ends-seen.ts";
import { shownEndOfA } from "./shown-ends.ts";
import { matchOpened } from "./testing/match-opened.ts";

const entry = (n: number, body: EntryBody): Entry => ({ v: 1, id: `e${n}`, n, atMs: n, wallMs: n, body });
const logOf = (bodies: readonly EntryBody[], laneId = "mine"): LoggedEntry[] =>
  [matchOpened, ...bodies].map((body, i) => ({
    pos: i + 1,
    laneId: i === 0 ? "desk" : laneId,
    epoch: 1,
    entry: entry(i, body),
  }));
const viewOf = (log: readonly LoggedEntry[]) => {
  const folded = foldLog(log);
  if (!folded.ok) throw new Error(folded.error);
  return folded.value;
};

/** A rally in metres as each striker sees it: cross-court, down the line, into the middle, long. */
const RALLY = [
  { striker: "B", from: { x: 3, y: -12 }, to: { x: -2.8, y: 9 } },
  { striker: "A", from: { x: 3, y: -12 }, to: { x: 2.8, y: 9 } },
  { striker: "B", from: { x: -3, y: -12.5 }, to: { x: 0, y: 8 } },
  { striker: "A", from: { x: 0.2, y: -5 }, to: { x: 2.8, y: 13.6 } },
] as const satisfies readonly { readonly striker: Side; readonly from: object; readonly to: object }[];

/** Charted by hand: each ball is drawn where the drawing shows it, and stored with the end that was drawn. */
const charted = (endOfA: EndSeen, winner: Side): Point => {
  const shots = RALLY.map(({ striker, from, to }): Shot => {
    const seen = seenFrom({ from, to }, { seat: "behind", endOfA, striker });
    return { striker, ...seen };
  });
  const last = shots.at(-1);
  if (last) shots[shots.length - 1] = { ...last, result: "missed", miss: "long" };
  return { winner, level: "every", seat: "behind", endOfA, shots };
};

/** Two games, so that the players change ends after the first, with a seat that follows them or does not. */
const twoGames = (seat: "behind" | "alwaysNear"): LoggedEntry[] => {
  const bodies: EntryBody[] = [{ kind: "EndsStated", endOfA: "near" }];
  for (let i = 0; i < 8; i += 1) {
    const end = shownEndOfA(seat, viewOf(logOf(bodies)).endOfA, ["A"]);
    if (!end) throw new Error("the ends are known");
    bodies.push({ kind: "PointCharted", point: charted(end, "B") });
  }
  return logOf(bodies);
};
const readOf = (log: readonly LoggedEntry[]) =>
  viewOf(log).points.map((viewed) =>
    readShots(viewed, { A: "right", B: "right" }).map(({ stroke, kind }) => [
      stroke?.direction,
      stroke?.depthStruck,
      stroke?.ended,
      stroke && `${stroke.to.x.toFixed(2)} ${stroke.to.y.toFixed(2)}`,
      kind,
    ]),
  );

describe("player always near", () => {
  it("[PD12] derives the same choices before and after a change of ends as a seat that sees them change", () => {
    const kept = twoGames("alwaysNear");
    const followed = twoGames("behind");
    expect(viewOf(kept).points.map(({ point }) => point.endOfA)).toEqual(Array(8).fill("near"));
    expect(viewOf(followed).points.map(({ point }) => point.endOfA)).toEqual([
      ...Array(4).fill("near"),
      ...Array(4).fill("far"),
    ]);
    expect(readOf(kept)).toEqual(readOf(followed));
    const places = (point: number) =>
      readOf(kept)[point]?.map(([direction, depth, ended, to]) => [direction, depth, ended, to]);
    expect(places(0)).toEqual(places(7));
    expect(readOf(kept)[0]?.map(([direction]) => direction)).toEqual([
      "cross",
      "line",
      "middle",
      "fromMiddle",
    ]);
  });

  it("[PD12] is left out when ends are swapped after it, since it was drawn by other ends", () => {
    const before = twoGames("alwaysNear")
      .map(({ entry: { body } }) => body)
      .slice(1);
    const point: EntryBody = { kind: "PointCharted", point: charted("near", "A") };
    const bodies: EntryBody[] = [...before, point, { kind: "EndsStated", endOfA: "near" }, point, point];
    const log = logOf(bodies);
    const since = firstPointToTurn(viewOf(log), log);
    expect(since).toBe("e12");
    const end = turnEnds("near");
    const swapped = viewOf(
      logOf([...bodies, { kind: "EndsStated", endOfA: end, ...(since ? { since } : {}) }]),
    );
    expect(swapped.setAside).toEqual([]);
    expect(swapped.points.map((each) => each.point.endOfA)).toEqual([...Array(9).fill("near"), "far", "far"]);
  });
});

describe("ends that can be put right", () => {
  it("[PD12] start at the last change of ends", () => {
    const log = twoGames("behind");
    expect(firstPointToTurn(viewOf(log.slice(0, 9)), log.slice(0, 9))).toBe("e6");
    expect(firstPointToTurn(viewOf(log.slice(0, 2)), log.slice(0, 2))).toBeUndefined();
  });
});

describe("ends that a phone's person said", () => {
  it("[PD16] are asked for once by each person, and again when the answer was taken back", () => {
    const log = twoGames("behind");
    expect(hasSeenEnds(log, "mine")).toBe(true);
    expect(hasSeenEnds(log, "another")).toBe(false);
    const said = log.slice(0, 2);
    expect(hasSeenEnds(said, "mine")).toBe(true);
    const voided: EntryBody = { kind: "EntryVoided", target: "e1" };
    expect(
      hasSeenEnds([...said, { pos: 3, laneId: "mine", epoch: 1, entry: entry(2, voided) }], "mine"),
    ).toBe(false);
  });
});
