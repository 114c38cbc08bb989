import type { BoardTile } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { createWorld } from "./testing/create-node.ts";
import { pointEntries } from "./testing/entries.ts";

const tiles = (told: readonly { event: string; message: unknown }[]) =>
  told.filter((t) => t.event === "board.tile").map((t) => (t.message as BoardTile).tile);
const lane = { matchId: "m1", laneId: "lane-1" };
const batch = (from: number, to: number) => ({
  ...lane,
  incarnation: "log-1",
  entries: pointEntries(1, from, to),
});

describe("several nodes", () => {
  it("[LV13] a node that did not take the entries shows them within two seconds without any hint", async () => {
    const world = createWorld();
    const here = world.addNode({ notify: () => undefined });
    const there = world.addNode();
    const coach = there.connect("coach");
    await coach.ask("board.watch", { dayId: "d1", view: "staff" });
    const watcher = there.connect("coach");
    const page = await watcher.ask("court.watch", { matchId: "m1", after: 0, screen: "court" });
    const phone = here.connect("helper");
    await phone.ask("lane.open", { ...lane, level: "key" });
    await phone.ask("lane.append", batch(1, 7));
    await phone.ask("lane.beat", { ...lane, unsent: 3, wallMs: 1 });
    await world.time.advance(2_300);
    expect(tiles(coach.told).at(-1)).toMatchObject({ matchId: "m1", pos: 8, staff: { chartist: "Dana H." } });
    const pushed = watcher.told.flatMap((t) => (t.message as { entries: { pos: number }[] }).entries);
    expect(page.head).toBe(0);
    expect(pushed.map((e) => e.pos)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    await world.time.advance(5_000);
    const heard = coach.told.filter((t) => t.event === "board.heard").at(-1)?.message;
    expect(heard).toMatchObject({ heard: [{ matchId: "m1", unsent: 3 }] });
  });

  it("[LV13] a hint makes it quick", async () => {
    const world = createWorld();
    const here = world.addNode();
    const there = world.addNode();
    const watcher = there.connect("coach");
    const phone = here.connect("helper");
    await phone.ask("lane.open", { ...lane, level: "key" });
    await watcher.ask("court.watch", { matchId: "m1", after: 0, screen: "court" });
    await phone.ask("lane.append", batch(1, 2));
    await world.time.settle();
    expect(watcher.told).toHaveLength(1);
  });

  it("[LV13] both nodes may take entries of one match; each fills what it did not take", async () => {
    const world = createWorld();
    const nodes = [world.addNode(), world.addNode({ notify: () => undefined })];
    const phones = nodes.map((node) => node.connect("helper"));
    for (const phone of phones) await phone.ask("lane.open", { ...lane, level: "key" });
    for (let i = 0; i < 10; i += 1) {
      await phones[i % 2]?.ask("lane.append", batch(i + 1, i + 1));
    }
    await world.time.advance(2_100);
    const views = nodes.map(({ live }) =>
      live.directory.findMatch({ academyId: "curlew", matchId: "m1" })?.view(),
    );
    expect(views[0]?.pos).toBe(11);
    expect(views[0]).toEqual(views[1]);
  });

  it("[LV13] goes on reading heads when the store breaks off or cannot be listened to", async () => {
    const world = createWorld();
    let away = true;
    const { connect, faults } = world.addNode({
      incarnation: async () =>
        away ? { ok: false, error: { code: "unavailable" } } : world.store.incarnation(),
      listen: async () => ({ ok: false, error: { code: "unavailable" } }),
    });
    await world.time.advance(9_000);
    const coach = connect("coach");
    expect(await coach.ask("court.read", { matchId: "m1", after: 0 })).toMatchObject({ code: "unavailable" });
    away = false;
    await world.time.advance(2_100);
    expect(await coach.ask("court.read", { matchId: "m1", after: 0 })).toMatchObject({ ok: true });
    expect(faults).toEqual([]);
  });
});
