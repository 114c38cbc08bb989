import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import type { BoardTile, CourtEntries, Tile } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { createWorld, type FakePeer, type World } from "./testing/create-node.ts";
import { pointEntries } from "./testing/entries.ts";

const M1 = { academyId: "curlew", matchId: "m1" };
const laneOf = (no: number) => ({ matchId: "m1", laneId: `lane-${no}` });
const open = (peer: FakePeer, no: number) => peer.ask("lane.open", { ...laneOf(no), level: "key" });
const takeOver = (peer: FakePeer, no: number) =>
  peer.ask("lane.open", { ...laneOf(no), level: "key", takeOver: true });
const beat = (peer: FakePeer, no: number, unsent = 0) =>
  peer.ask("lane.beat", { ...laneOf(no), unsent, wallMs: 1 });
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

/** Dana H. leads on lane 1 and has charted two points. */
const begin = async () => {
  const world = createWorld();
  const node = world.addNode();
  const dana = node.connect("helper");
  await open(dana, 1);
  await chart(dana, 1, 1, 2);
  return { world, node, dana, rosa: node.connect("relief") };
};

describe("taking over the lead", () => {
  it("[LV29] is refused to a helper until the lead was not heard for 30 s, and told since when", async () => {
    const { world, rosa } = await begin();
    const heardMs = world.time.clock.wallMs();
    expect(await open(rosa, 2)).toEqual({
      ok: false,
      code: "lead_taken",
      retry: true,
      afterMs: 3_000,
      leader: { by: "Dana H.", heardMs, serverMs: heardMs, takeOverInMs: 30_000 },
    });
    await world.time.advance(29_000);
    expect(await takeOver(rosa, 2)).toMatchObject({
      code: "lead_taken",
      afterMs: 1_000,
      leader: { heardMs, serverMs: heardMs + 29_000, takeOverInMs: 1_000 },
    });
    await world.time.advance(999);
    expect(await takeOver(rosa, 2)).toMatchObject({ code: "lead_taken", afterMs: 500 });
    await world.time.advance(1);
    expect(await open(rosa, 2)).toMatchObject({ code: "lead_taken", leader: { takeOverInMs: 0 } });
    expect(await takeOver(rosa, 2)).toMatchObject({
      ok: true,
      leads: true,
      epoch: 2,
      cursor: 0,
      chartist: "Rosa T.",
    });
  });

  it("[LV29] counts silence anew from every word of the lead's phone", async () => {
    const { world, dana, rosa } = await begin();
    await world.time.advance(25_000);
    await beat(dana, 1);
    await world.time.advance(25_000);
    expect(await takeOver(rosa, 2)).toMatchObject({ code: "lead_taken", leader: { takeOverInMs: 5_000 } });
  });

  it("[LV29] staff may at once, and so may the session that leads already", async () => {
    const { world, node, dana } = await begin();
    const coach = node.connect("coach");
    expect(await open(coach, 3)).toMatchObject({ code: "lead_taken", leader: { takeOverInMs: 0 } });
    expect(await takeOver(coach, 3)).toMatchObject({ ok: true, leads: true, epoch: 2 });
    // The coach's phone lost its storage: a new lane of the same member.
    expect(await takeOver(coach, 4)).toMatchObject({ ok: true, leads: true, epoch: 3 });
    expect(await takeOver(dana, 5)).toMatchObject({ code: "lead_taken", leader: { by: "Tobias A." } });
    await world.time.advance(30_000);
    expect(await takeOver(dana, 5)).toMatchObject({ ok: true, epoch: 4 });
    expect(await takeOver(node.connect("helper"), 6)).toMatchObject({ ok: true, epoch: 5 });
  });

  it("[PD43] names a phone's own lane to it when the phone comes back without its copy, and to nobody else", async () => {
    const { dana, rosa } = await begin();
    const own = await open(dana, 2);
    expect(own).toMatchObject({ code: "lead_taken", leader: { takeOverInMs: 0, ownPhone: true } });
    const other = await open(rosa, 3);
    expect(other).toMatchObject({ code: "lead_taken" });
    expect(JSON.stringify(other)).not.toContain("ownPhone");
  });

  it("[LV29] never happens by time alone", async () => {
    const { world, dana, rosa } = await begin();
    await world.time.advance(3_600_000);
    expect(await open(rosa, 2)).toMatchObject({ code: "lead_taken" });
    expect(await open(dana, 1)).toMatchObject({ ok: true, leads: true, epoch: 1 });
  });

  it("[LV29] does not hold a node's own absence against a phone", async () => {
    const { world } = await begin();
    await world.time.advance(60_000);
    const restarted = world.addNode().connect("relief");
    expect(await takeOver(restarted, 2)).toMatchObject({
      code: "lead_taken",
      leader: { takeOverInMs: 30_000 },
    });
  });

  it("[LV29] of two who press at once one leads, and the other hears of whom", async () => {
    const { world, node, rosa } = await begin();
    await world.time.advance(30_000);
    const answers = await Promise.all([takeOver(rosa, 2), takeOver(node.connect("relief"), 3)]);
    // The same session asked twice: it may replace itself, and each lead has an epoch of its own.
    expect(answers.map(({ epoch }) => epoch)).toEqual([2, 3]);
    await world.time.advance(30_000);
    const [first, second] = await Promise.all([
      takeOver(node.connect("helper"), 4),
      takeOver(node.connect("relief"), 5),
    ]);
    expect(first).toMatchObject({ ok: true, epoch: 4 });
    expect(second).toMatchObject({ code: "lead_taken", leader: { by: "Dana H.", takeOverInMs: 30_000 } });
  });

  it("[LV30] shows the new chartist to boards and viewers at once, and counts the new phone's words", async () => {
    const { world, node, dana } = await begin();
    const viewer = node.connect("coach");
    await viewer.ask("board.watch", { dayId: "d1", view: "staff" });
    await viewer.ask("court.watch", { matchId: "m1", after: 0, screen: "court" });
    await beat(dana, 1, 7);
    await world.time.advance(1_000);
    const coach = node.connect("coach");
    await takeOver(coach, 2);
    await world.time.advance(300);
    expect(lastTile(viewer)).toMatchObject({
      staff: { chartist: "Tobias A." },
      heard: { heardMs: world.time.clock.wallMs() - 300, unsent: 0 },
    });
    const pushed = viewer.told.filter((t) => t.event === "court.entries").at(-1)?.message as CourtEntries;
    expect(pushed.entries.map(({ entry }) => entry.body)).toEqual([
      { kind: "LeadTaken", laneId: "lane-2", epoch: 2 },
    ]);
    const heardMs = world.time.clock.wallMs();
    await world.time.advance(5_000);
    expect(await beat(dana, 1)).toMatchObject({ ok: true, leads: false });
    expect(await open(dana, 1)).toMatchObject({
      ok: true,
      leads: false,
      epoch: 1,
      leader: { by: "Tobias A.", heardMs: heardMs - 300 },
    });
    expect(await beat(coach, 2)).toMatchObject({ ok: true, leads: true });
  });

  it("[LV30] another node shows it within two seconds", async () => {
    const { world, node } = await begin();
    const there = world.addNode().connect("coach");
    await there.ask("board.watch", { dayId: "d1", view: "staff" });
    await world.time.advance(100);
    await takeOver(node.connect("director"), 2);
    await world.time.advance(2_400);
    expect(lastTile(there)?.staff?.chartist).toBe("Maren H.");
  });

  it("[LV30] late entries of the old lane stand beside the score, never lost and never doubled", async () => {
    const { world, node, dana, rosa } = await begin();
    await world.time.advance(30_000);
    await takeOver(rosa, 2);
    const late = [chart(dana, 1, 3, 4), chart(rosa, 2, 1, 3), chart(dana, 1, 3, 4), chart(dana, 1, 3, 5)];
    const answers = await Promise.all(late);
    expect(answers.map(({ ok, kind }) => [ok, kind])).toEqual([
      [true, "appended"],
      [true, "appended"],
      [true, "duplicate"],
      [true, "appended"],
    ]);
    const log = await logOf(world);
    expect(log.map(({ pos }) => pos)).toEqual(log.map((_, i) => i + 1));
    expect(new Set(log.map(({ entry }) => entry.id)).size).toBe(log.length);
    const view = node.live.directory.findMatch(M1)?.view();
    expect(view?.points.map(({ laneId }) => laneId)).toEqual([
      "lane-1",
      "lane-1",
      "lane-2",
      "lane-2",
      "lane-2",
    ]);
    expect(view?.setAside.map(({ reason }) => reason)).toEqual(["notLead", "notLead", "notLead"]);
    const folded = foldLog(log);
    expect(folded.ok && JSON.stringify(folded.value)).toBe(JSON.stringify(view));
  });

  it("[LV30] nothing is written when it is refused", async () => {
    const { world, node, rosa } = await begin();
    const before = await logOf(world);
    await takeOver(rosa, 2);
    await takeOver(node.connect("otherHelper"), 2);
    await takeOver(node.connect("stranger"), 2);
    await takeOver(node.connect("wall"), 2);
    expect(await logOf(world)).toEqual(before);
    expect(await world.store.head(M1)).toMatchObject({ value: { epoch: 1, leadLaneId: "lane-1" } });
  });
});
