import type { Entry } from "@courtloom/match-log";
import type { AlertKey, AlertLine, AlertNotices, Alerts, BoardTile, TileAlert } from "@courtloom/protocol";
import { createWorld, type FakePeer, type Node } from "./create-node.ts";
import { entryId, missedLineBalls, pointEntry } from "./entries.ts";
import { sampleWatch } from "./sample-watch.ts";

export const LANE = { matchId: "m1", laneId: "lane-1" } as const;

/** The invented day with a watch on side A of every match. */
export const createAlertDay = () => {
  const world = createWorld();
  world.day.opening = { watches: [sampleWatch()] };
  return world;
};

/** One entry of the helper's lane that amends or voids the n-th. */
export const correction = (n: number, body: Entry["body"]): Entry => ({ ...pointEntry(1, n), body });

/** Point `n`, the line ball made and won. */
export const madeLineBall = (n: number): Entry => {
  const entry = pointEntry(1, n);
  if (entry.body.kind !== "PointCharted") throw new Error("a point");
  const [shot] = entry.body.point.shots;
  if (!shot) throw new Error("a shot");
  const { point } = entry.body;
  return {
    ...entry,
    body: { kind: "PointCharted", point: { ...point, winner: "A", shots: [{ ...shot, result: "winner" }] } },
  };
};

/** A helper's phone on court 1 of a node. */
export const chartOn = async (node: Node) => {
  const phone = node.connect("helper");
  await phone.ask("lane.open", { ...LANE, level: "every" });
  const send = (entries: readonly Entry[]) =>
    phone.ask("lane.append", { ...LANE, incarnation: "log-1", entries });
  return { phone, send, miss: (from: number, to: number) => send(missedLineBalls(from, to)) };
};

export const idOf = (n: number): string => entryId(1, n);

export const listsTold = ({ told }: FakePeer): readonly (readonly AlertLine[])[] =>
  told.filter(({ event }) => event === "alerts.list").map(({ message }) => (message as Alerts).alerts);

export const noticesTold = ({ told }: FakePeer): readonly AlertKey[] =>
  told
    .filter(({ event }) => event === "alerts.notices")
    .flatMap(({ message }) => (message as AlertNotices).notices);

export const tileAlertsTold = ({ told }: FakePeer): readonly (readonly TileAlert[] | undefined)[] =>
  told
    .filter(({ event }) => event === "board.tile")
    .map(({ message }) => (message as BoardTile).tile.staff?.alerts);
