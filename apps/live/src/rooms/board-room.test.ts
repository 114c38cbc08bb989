import type { BoardHeard, BoardTile, Tile } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { createLive } from "../live.ts";
import { createWorld, type FakePeer, type Node } from "../testing/create-node.ts";
import { pointEntries } from "../testing/entries.ts";
import { membersOf } from "../testing/principals.ts";

const tilesTold = ({ told }: FakePeer): Tile[] =>
  told.filter((t) => t.event === "board.tile").map((t) => (t.message as BoardTile).tile);
const heardTold = ({ told }: FakePeer): BoardHeard[] =>
  told.filter((t) => t.event === "board.heard").map((t) => t.message as BoardHeard);

const startCharting = async (node: Node) => {
  const phone = node.connect("helper");
  await phone.ask("lane.open", { matchId: "m1", laneId: "lane-1", level: "key" });
  let n = 0;
  const chart = async (count: number) => {
    const entries = pointEntries(1, n + 1, n + count);
    n += count;
    return phone.ask("lane.append", { matchId: "m1", laneId: "lane-1", incarnation: "log-1", entries });
  };
  return { phone, chart };
};

describe("a board room", () => {
  it("[LV7] shows every court of the day: who plays, what follows, and the state", async () => {
    const world = createWorld();
    const node = world.addNode();
    const coach = node.connect("coach");
    const reply = await coach.ask("board.watch", { dayId: "d1", view: "staff" });
    expect(reply).toMatchObject({ ok: true, dayName: "Tide Cup", academyName: "Curlew Reach" });
    expect(reply.tiles).toMatchObject([
      { courtNo: 1, matchId: "m1", state: "waiting", next: "Signe F. – Zofia W.", score: null, pos: 0 },
      { courtNo: 2, matchId: "m2", state: "waiting", next: null, own: { A: true, B: false } },
    ]);
  });

  it("[LV9] gives staff the score, who charts and the figures with n and interval", async () => {
    const world = createWorld();
    const node = world.addNode();
    const coach = node.connect("coach");
    await coach.ask("board.watch", { dayId: "d1", view: "staff" });
    const { chart } = await startCharting(node);
    await chart(2);
    await world.time.advance(600);
    const tile = tilesTold(coach).at(-1);
    expect(tile).toMatchObject({
      state: "playing",
      matchId: "m1",
      pos: 3,
      score: { points: { A: "30", B: "0" }, games: [0, 0], server: "A" },
      staff: {
        chartist: "Dana H.",
        level: "every",
        coachingMode: "practice",
        bothOwn: false,
        setAsideCount: 0,
        figures: { A: { lineMissed: { x: 0, n: 2 }, usualLineMissed: { mean: 0.3 } }, B: null },
      },
    });
    expect(tile?.staff?.figures.A?.lineShare.high).toBe(1);
  });

  it("[LV10] a wall gets scores and order of play only, whoever watches it", async () => {
    const world = createWorld();
    const node = world.addNode();
    const watchers = [node.connect("wall"), node.connect("director")];
    const replies = [];
    for (const peer of watchers) replies.push(await peer.ask("board.watch", { dayId: "d1", view: "wall" }));
    const { phone, chart } = await startCharting(node);
    await chart(5);
    await phone.ask("lane.beat", { matchId: "m1", laneId: "lane-1", unsent: 4, wallMs: 1 });
    await world.time.advance(5_000);
    for (const peer of watchers) {
      expect(tilesTold(peer).at(-1)).toMatchObject({ state: "playing", pos: 6 });
      expect(heardTold(peer).at(-1)?.heard[0]).toMatchObject({ matchId: "m1", unsent: null });
    }
    const all = JSON.stringify([replies, watchers.map((peer) => peer.told)]);
    expect(all).not.toMatch(/staff|figures|lineMissed|usual|chartist|Dana|coachingMode|plan/);
  });

  it("[LV8] tells of one court at most four times a second, and the last word is the latest", async () => {
    const world = createWorld();
    const node = world.addNode();
    const { chart } = await startCharting(node);
    const coach = node.connect("coach");
    await coach.ask("board.watch", { dayId: "d1", view: "staff" });
    await world.time.advance(1_000);
    coach.told.length = 0;
    for (let i = 0; i < 40; i += 1) {
      await chart(1);
      await world.time.advance(25);
    }
    const within = tilesTold(coach).length;
    await world.time.advance(300);
    expect(within).toBeGreaterThanOrEqual(3);
    expect(within).toBeLessThanOrEqual(5);
    expect(tilesTold(coach).at(-1)?.pos).toBe(41);
  });

  it("[LV8] stamps its tiles in order though the clock is set back", async () => {
    const world = createWorld();
    const { runtime } = world.addNode();
    let setBackMs = 0;
    const clock = { ...runtime.clock, wallMs: () => runtime.clock.wallMs() - setBackMs };
    const { principalOf } = world.sessions;
    const { store, day: days, alerts } = world;
    const parts = { store, days, alerts, membersOf, principalOf };
    const board = createLive({ runtime: { ...runtime, clock }, ...parts }).directory.boardRoom(
      "curlew",
      "d1",
    );
    const stampOf = async () => {
      const snapshot = await board.watch({ send: () => undefined }, "staff", () => true);
      return snapshot?.serverMs ?? 0;
    };
    const before = await stampOf();
    setBackMs = 3_600_000;
    const after = await stampOf();
    expect(after).toBeGreaterThan(before);
    expect(await stampOf()).toBeGreaterThan(after);
  });

  it("[LV11] tells about once a second which phones were heard, and only while one is", async () => {
    const world = createWorld();
    const node = world.addNode();
    const coach = node.connect("coach");
    await coach.ask("board.watch", { dayId: "d1", view: "staff" });
    const { phone } = await startCharting(node);
    await world.time.advance(2_000);
    coach.told.length = 0;
    for (let i = 0; i < 3; i += 1) {
      await phone.ask("lane.beat", { matchId: "m1", laneId: "lane-1", unsent: i, wallMs: 1 });
      await world.time.advance(3_000);
    }
    expect(heardTold(coach).map((m) => m.heard)).toEqual([
      [expect.objectContaining({ matchId: "m1", unsent: 0 })],
      [expect.objectContaining({ matchId: "m1", unsent: 1 })],
      [expect.objectContaining({ matchId: "m1", unsent: 2 })],
    ]);
    const kept = await world.store.head({ academyId: "curlew", matchId: "m1" });
    expect(kept.ok && kept.value.unsent).toBe(2);
    coach.told.length = 0;
    await world.time.advance(10_000);
    expect(heardTold(coach)).toEqual([]);
  });

  it("[LV12] writes once that a match is over, and the court goes on to the next one", async () => {
    const world = createWorld();
    const node = world.addNode();
    const coach = node.connect("coach");
    await coach.ask("board.watch", { dayId: "d1", view: "staff" });
    const { phone } = await startCharting(node);
    const [point] = pointEntries(1, 1, 1);
    const retired = { ...point, body: { kind: "MatchEnded", how: { type: "retired", side: "B" } } };
    await phone.ask("lane.append", {
      matchId: "m1",
      laneId: "lane-1",
      incarnation: "log-1",
      entries: [retired],
    });
    await world.time.advance(6_000);
    expect(world.day.settled).toEqual([
      { matchId: "m1", over: false },
      { matchId: "m1", over: true },
    ]);
    expect(tilesTold(coach).at(-1)).toMatchObject({ courtNo: 1, matchId: "m3", state: "waiting" });
  });

  it("[LV12] tries again while the database is away", async () => {
    const world = createWorld();
    const node = world.addNode();
    const { chart } = await startCharting(node);
    await chart(3);
    await world.time.advance(2_100);
    const before = world.day.settled.length;
    world.day.away = true;
    await world.store.sealMatch({ academyId: "curlew", matchId: "m1" });
    await world.time.advance(6_000);
    expect(world.day.settled.length).toBe(before);
    world.day.away = false;
    await world.time.advance(2_100);
    expect(world.day.settled.at(-1)).toEqual({ matchId: "m1", over: true });
    expect(node.faults).toEqual([]);
  });
});
