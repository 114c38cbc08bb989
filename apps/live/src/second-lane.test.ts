import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import type { BoardTile, Tile } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { createWorld, type FakePeer, type World } from "./testing/create-node.ts";
import { pointEntries } from "./testing/entries.ts";

const M1 = { academyId: "curlew", matchId: "m1" };
const laneOf = (no: number) => ({ matchId: "m1", laneId: `lane-${no}` });
const open = (peer: FakePeer, no: number, more: object = {}) =>
  peer.ask("lane.open", { ...laneOf(no), level: "key", ...more });
const chart = (peer: FakePeer, no: number, from: number, to: number) =>
  peer.ask("lane.append", { ...laneOf(no), incarnation: "log-1", entries: pointEntries(no, from, to) });

const lastTile = ({ told }: FakePeer): Tile | undefined =>
  told
    .filter((t) => t.event === "board.tile")
    .map((t) => (t.message as BoardTile).tile)
    .at(-1);

const logOf = async ({ store }: World): Promise<readonly LoggedEntry[]> => {
  const page = await store.read({ ...M1, after: 0, limit: 1_000 });
  return page.ok ? page.value.entries : [];
};

/** Dana H. leads and has charted two points; Rosa T. charts beside her. */
const begin = async () => {
  const world = createWorld();
  const node = world.addNode();
  const dana = node.connect("helper");
  const rosa = node.connect("relief");
  await open(dana, 1);
  await chart(dana, 1, 1, 2);
  return { world, node, dana, rosa, opened: await open(rosa, 2, { second: true }) };
};

describe("charting as second", () => {
  it("[LV36] is given to whoever may chart the match, beside a lead that goes on, and told who leads", async () => {
    const { dana, opened, node } = await begin();
    expect(opened).toMatchObject({
      ...{ ok: true, leads: false, epoch: -1, cursor: 0, chartist: "Rosa T." },
      leader: { by: "Dana H." },
    });
    expect(await open(dana, 1)).toMatchObject({ ok: true, leads: true, epoch: 1 });
    for (const person of ["otherHelper", "stranger", "wall"] as const)
      expect(await open(node.connect(person), 9, { second: true })).toMatchObject({ ok: false });
  });

  it("[LV36] is there before anybody leads, and the first that asks for the lead has epoch 1", async () => {
    const world = createWorld();
    const node = world.addNode();
    const first = await open(node.connect("relief"), 2, { second: true });
    expect([first.leads, first.epoch, "leader" in first]).toEqual([false, -1, false]);
    expect(await open(node.connect("helper"), 1)).toMatchObject({ leads: true, epoch: 1 });
  });

  it("[LV36] wins over a wish for the lead in one message", async () => {
    const { world, node } = await begin();
    const coach = node.connect("coach");
    expect(await open(coach, 3, { second: true, takeOver: true })).toMatchObject({ leads: false, epoch: -1 });
    expect(await world.store.head(M1)).toMatchObject({ value: { epoch: 1, leadLaneId: "lane-1" } });
  });

  it("[LV37] leaves score, set-aside count and heard word to the lead, and names the second to staff alone", async () => {
    const { world, node, dana, rosa } = await begin();
    const staff = node.connect("coach");
    const wall = node.connect("wall");
    await staff.ask("board.watch", { dayId: "d1", view: "staff" });
    await wall.ask("board.watch", { dayId: "d1", view: "wall" });
    const heardMs = world.time.clock.wallMs();
    await world.time.advance(5_000);
    await chart(rosa, 2, 1, 3);
    await rosa.ask("lane.beat", { ...laneOf(2), unsent: 9, wallMs: 1 });
    await world.time.advance(300);
    expect(lastTile(staff)).toMatchObject({
      heard: { heardMs, unsent: 0 },
      staff: { chartist: "Dana H.", seconds: ["Rosa T."], setAsideCount: 0 },
    });
    expect(lastTile(wall)).not.toHaveProperty("staff");
    expect(node.live.directory.findMatch(M1)?.view()?.points).toHaveLength(2);
    expect(await rosa.ask("lane.beat", { ...laneOf(2), unsent: 0, wallMs: 1 })).toMatchObject({
      ...{ ok: true, leads: false },
    });
    await chart(dana, 1, 3, 3);
    expect(node.live.directory.findMatch(M1)?.view()?.points).toHaveLength(3);
  });

  it("[LV37] is named on another node too, also when the name could not be read at first", async () => {
    const { world, rosa } = await begin();
    let away = true;
    const other = world.addNode({
      lanes: async (match) =>
        away ? { ok: false, error: { code: "unavailable" } } : world.store.lanes(match),
    });
    const there = other.connect("coach");
    await there.ask("board.watch", { dayId: "d1", view: "staff" });
    await chart(rosa, 2, 1, 1);
    await world.time.advance(2_500);
    expect(lastTile(there)?.staff).not.toHaveProperty("seconds");
    away = false;
    await world.time.advance(2_500);
    expect(lastTile(there)?.staff?.seconds).toEqual(["Rosa T."]);
  });

  it("[LV39] tells every phone whose the match's other lanes are, on every node", async () => {
    const { world, dana, rosa } = await begin();
    const beat = (peer: FakePeer, no: number) =>
      peer.ask("lane.beat", { ...laneOf(no), unsent: 0, wallMs: 1 });
    expect(await beat(dana, 1)).not.toHaveProperty("others");
    await chart(rosa, 2, 1, 1);
    expect(await beat(dana, 1)).toMatchObject({ others: [{ laneId: "lane-2", chartist: "Rosa T." }] });
    expect(await beat(rosa, 2)).toMatchObject({ others: [{ laneId: "lane-1", chartist: "Dana H." }] });
    const other = world.addNode().connect("helper");
    await open(other, 1);
    await world.time.advance(2_500);
    expect(await beat(other, 1)).toMatchObject({ others: [{ laneId: "lane-2", chartist: "Rosa T." }] });
  });

  it("[LV38] goes on when the lead changes hands, and what was charted stays beside the score", async () => {
    const { world, node, dana, rosa } = await begin();
    await chart(rosa, 2, 1, 2);
    await open(node.connect("coach"), 3, { takeOver: true });
    expect(await open(rosa, 2, { second: true })).toMatchObject({
      ...{ leads: false, epoch: -1, cursor: 2, leader: { by: "Tobias A." } },
    });
    await chart(rosa, 2, 3, 3);
    await chart(dana, 1, 3, 3);
    const folded = foldLog(await logOf(world));
    expect(folded.ok && folded.value.trail.second.map(({ laneId }) => laneId)).toEqual([
      "lane-2",
      "lane-2",
      "lane-2",
    ]);
    expect(folded.ok && folded.value.setAside.map(({ reason }) => reason)).toEqual(["notLead"]);
  });
});
