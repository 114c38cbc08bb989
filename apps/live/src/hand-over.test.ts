import { err, ok } from "@courtloom/core";
import { describe, expect, it } from "vitest";
import { createWorld, type FakePeer, type World } from "./testing/create-node.ts";
import { pointEntries } from "./testing/entries.ts";
import { PEOPLE } from "./testing/principals.ts";

const M1 = { academyId: "curlew", matchId: "m1" };
const MINUTE = 60_000;
const laneOf = (no: number) => ({ matchId: "m1", laneId: `lane-${no}` });
const open = (peer: FakePeer, no: number) => peer.ask("lane.open", { ...laneOf(no), level: "key" });
const takeOver = (peer: FakePeer, no: number) =>
  peer.ask("lane.open", { ...laneOf(no), level: "key", takeOver: true });
const beat = (peer: FakePeer, no: number) => peer.ask("lane.beat", { ...laneOf(no), unsent: 0, wallMs: 1 });
const chart = (peer: FakePeer, no: number, from: number, to: number) =>
  peer.ask("lane.append", { ...laneOf(no), incarnation: "log-1", entries: pointEntries(no, from, to) });

const ROSA = { kind: "courtside", id: PEOPLE.relief.sessionId } as const;

/** Dana leads with two points; a code of hers was entered by Rosa on the same court. */
const begin = async () => {
  const world = createWorld();
  const node = world.addNode();
  const dana = node.connect("helper");
  await open(dana, 1);
  await chart(dana, 1, 1, 2);
  const hand = (laneId: string, to: { readonly kind: "courtside" | "member"; readonly id: string } = ROSA) =>
    world.store.addHandOver({ ...M1, laneId, to, untilMs: world.time.clock.wallMs() + 10 * MINUTE });
  return { world, node, dana, rosa: node.connect("relief"), hand };
};

const lanesThatLed = async (world: World) => {
  const page = await world.store.read({ ...M1, after: 0, limit: 100 });
  if (!page.ok) throw new Error(page.error.code);
  return page.value.entries.flatMap(({ entry: { body } }) =>
    body.kind === "LeadTaken" ? [body.laneId] : [],
  );
};

describe("handing the lead over", () => {
  it("[LV32] lets whom it was handed to lead at once, though the lead's phone is heard", async () => {
    const { world, dana, rosa, hand } = await begin();
    expect(await open(rosa, 2)).toMatchObject({ code: "lead_taken", leader: { takeOverInMs: 30_000 } });
    hand("lane-1");
    expect(await open(rosa, 2)).toMatchObject({ code: "lead_taken", leader: { takeOverInMs: 0 } });
    await beat(dana, 1);
    expect(await takeOver(rosa, 2)).toMatchObject({ ok: true, leads: true, epoch: 2, chartist: "Rosa T." });
    expect(await lanesThatLed(world)).toEqual(["lane-2"]);
  });

  it("[LV32] never happens without being asked for, nor for anybody else", async () => {
    const { world, node, rosa, hand } = await begin();
    hand("lane-1", { kind: "courtside", id: "another session" });
    hand("lane-1", { kind: "member", id: ROSA.id });
    expect(await takeOver(rosa, 2)).toMatchObject({ code: "lead_taken", leader: { takeOverInMs: 30_000 } });
    hand("lane-1");
    expect(await open(rosa, 2)).toMatchObject({ code: "lead_taken" });
    for (const person of ["otherHelper", "stranger", "wall"] as const) {
      expect(await takeOver(node.connect(person), 7)).toMatchObject({ ok: false });
    }
    expect(await lanesThatLed(world)).toEqual([]);
  });

  it("[LV33] is for that lane's lead only: another lead ends it, and it is not used twice", async () => {
    const { world, node, dana, rosa, hand } = await begin();
    hand("lane-1");
    await takeOver(node.connect("coach"), 3);
    expect(await takeOver(rosa, 2)).toMatchObject({
      code: "lead_taken",
      leader: { by: "Tobias A.", takeOverInMs: 30_000 },
    });
    hand("lane-3");
    expect(await takeOver(rosa, 2)).toMatchObject({ ok: true, epoch: 3 });
    await world.time.advance(30_000);
    expect(await takeOver(dana, 4)).toMatchObject({ ok: true, epoch: 4 });
    expect(await takeOver(rosa, 5)).toMatchObject({ code: "lead_taken", leader: { takeOverInMs: 30_000 } });
  });

  it("[LV33] ends after its time", async () => {
    const { world, dana, rosa, hand } = await begin();
    hand("lane-1");
    await world.time.advance(10 * MINUTE);
    await open(dana, 1);
    expect(await takeOver(rosa, 2)).toMatchObject({ code: "lead_taken", leader: { takeOverInMs: 30_000 } });
  });

  it("[LV34] the old phone hears within a beat to whom it was handed, and its late points stand beside the score", async () => {
    const { node, dana, rosa, hand } = await begin();
    hand("lane-1");
    await takeOver(rosa, 2);
    await chart(rosa, 2, 1, 1);
    expect(await beat(dana, 1)).toMatchObject({ ok: true, leads: false });
    expect(await open(dana, 1)).toMatchObject({
      ...{ ok: true, leads: false, epoch: 1 },
      leader: { by: "Rosa T.", handedOver: true, takeOverInMs: 30_000 },
    });
    expect(await chart(dana, 1, 3, 3)).toMatchObject({ ok: true, kind: "appended" });
    const view = node.live.directory.findMatch(M1)?.view();
    expect(view?.points.map(({ laneId }) => laneId)).toEqual(["lane-1", "lane-1", "lane-2"]);
    expect(view?.setAside.map(({ reason }) => reason)).toEqual(["notLead"]);
  });

  it("[LV34] says so of no other lead", async () => {
    const { node, dana, rosa, hand } = await begin();
    hand("lane-1");
    await takeOver(rosa, 2);
    await takeOver(node.connect("coach"), 3);
    const told = await open(dana, 1);
    expect(told).toMatchObject({ leader: { by: "Tobias A." } });
    expect(told.leader).not.toHaveProperty("handedOver");
  });

  it("[LV35] holds on another node and after a restart, as the store has it", async () => {
    const { world, hand } = await begin();
    hand("lane-1");
    const restarted = world.addNode().connect("relief");
    expect(await takeOver(restarted, 2)).toMatchObject({ ok: true, epoch: 2 });
  });

  it("[LV35] asks to try again while the store cannot say, and takes nothing over", async () => {
    const { world, hand } = await begin();
    hand("lane-1");
    let away = true;
    const node = world.addNode({
      handOver: async (ask) => (away ? err({ code: "unavailable" }) : world.store.handOver(ask)),
    });
    const rosa = node.connect("relief");
    for (const asked of [open, takeOver]) {
      expect(await asked(rosa, 2)).toMatchObject({ ok: false, code: "unavailable", retry: true });
    }
    away = false;
    expect(await takeOver(rosa, 2)).toMatchObject({ ok: true, epoch: 2 });
    expect(await world.store.handOver({ ...M1, laneId: "lane-2", to: ROSA })).toEqual(ok(undefined));
  });
});
