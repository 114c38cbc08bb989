import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import type { CourtEntries } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { createMemoryStore, createWorld, type FakePeer, type World } from "../testing/create-node.ts";
import { pointEntries, pointEntry } from "../testing/entries.ts";

const M1 = { academyId: "curlew", matchId: "m1" };
const open = { matchId: "m1", laneId: "lane-1", level: "key" };
const batch = (from: number, to: number, incarnation = "log-1") => ({
  matchId: "m1",
  laneId: "lane-1",
  incarnation,
  entries: pointEntries(1, from, to),
});
const stored = async ({ store }: World): Promise<readonly LoggedEntry[]> => {
  const page = await store.read({ ...M1, after: 0, limit: 1_000 });
  return page.ok ? page.value.entries : [];
};
const pushed = ({ told }: FakePeer): LoggedEntry[] =>
  told.filter((t) => t.event === "court.entries").flatMap((t) => (t.message as CourtEntries).entries);

describe("a match room", () => {
  it("[LV6] opens the log with the first lane, once, frozen as things stand", async () => {
    const world = createWorld();
    const { connect, live } = world.addNode();
    const first = await connect("helper").ask("lane.open", open);
    expect(first).toMatchObject({
      ok: true,
      incarnation: "log-1",
      epoch: 1,
      cursor: 0,
      head: 1,
      chartist: "Dana H.",
    });
    const again = await connect("helper").ask("lane.open", open);
    expect(again).toEqual(first);
    expect(await stored(world)).toHaveLength(1);
    expect(live.directory.findMatch(M1)?.view()?.opened.usualRates?.A.lineMissed?.mean).toBe(0.3);
  });

  it("[LV1] answers only after the commit, and tells readers only after that", async () => {
    const world = createWorld();
    const commit = Promise.withResolvers<void>();
    const { connect } = world.addNode({
      append: async (append) => {
        await commit.promise;
        return world.store.append(append);
      },
    });
    const phone = connect("helper");
    await phone.ask("lane.open", open);
    const coach = connect("coach");
    await coach.ask("court.watch", { matchId: "m1", after: 0, screen: "court" });
    let answered = false;
    const reply = phone.ask("lane.append", batch(1, 3)).then((answer) => {
      answered = true;
      return answer;
    });
    await world.time.settle();
    expect({ answered, told: coach.told.length, stored: (await stored(world)).length }).toEqual({
      answered: false,
      told: 0,
      stored: 1,
    });
    commit.resolve();
    expect(await reply).toEqual({ ok: true, kind: "appended", upTo: 3, head: 4, rejected: [] });
    await world.time.settle();
    expect(pushed(coach).map((e) => e.pos)).toEqual([2, 3, 4]);
  });

  it("[LV2] appends of one match one after the other, and viewers equal the fold", async () => {
    const world = createWorld();
    let running = 0;
    let most = 0;
    const { connect, live } = world.addNode({
      append: async (append) => {
        running += 1;
        most = Math.max(most, running);
        await new Promise((resolve) => setImmediate(resolve));
        running -= 1;
        return world.store.append(append);
      },
    });
    const phone = connect("helper");
    await phone.ask("lane.open", open);
    const coach = connect("coach");
    const page = await coach.ask("court.watch", { matchId: "m1", after: 0, screen: "court" });
    await Promise.all(
      Array.from({ length: 8 }, (_, i) => phone.ask("lane.append", batch(i * 5 + 1, i * 5 + 5))),
    );
    await world.time.settle();
    const seen = [...(page.entries as LoggedEntry[]), ...pushed(coach)];
    expect(most).toBe(1);
    expect(seen).toEqual(await stored(world));
    const folded = foldLog(seen);
    expect(folded.ok && live.directory.findMatch(M1)?.view()).toEqual(folded.ok && folded.value);
  });

  it("[LV3] subscribing and reading are one step: nothing is missed between them and nothing comes twice", async () => {
    const world = createWorld();
    const { connect } = world.addNode();
    const phone = connect("helper");
    await phone.ask("lane.open", open);
    const coach = connect("coach");
    const [, page] = await Promise.all([
      phone.ask("lane.append", batch(1, 5)),
      coach.ask("court.watch", { matchId: "m1", after: 0, screen: "court" }),
      phone.ask("lane.append", batch(6, 10)),
    ]);
    await world.time.settle();
    expect([...(page.entries as LoggedEntry[]), ...pushed(coach)].map((e) => e.pos)).toEqual(
      Array.from({ length: 11 }, (_, i) => i + 1),
    );
  });

  it("[LV4] says what a batch meets: duplicate, gap, another entry, another log, an unknown lane", async () => {
    const world = createWorld();
    const { connect } = world.addNode();
    const phone = connect("helper");
    expect(await phone.ask("lane.append", batch(1, 1))).toEqual({
      ok: false,
      code: "unknown_lane",
      retry: true,
    });
    await phone.ask("lane.open", open);
    await phone.ask("lane.append", batch(1, 4));
    expect(await phone.ask("lane.append", batch(1, 4))).toMatchObject({
      ok: true,
      kind: "duplicate",
      upTo: 4,
    });
    expect(await phone.ask("lane.append", batch(6, 7))).toEqual({ ok: false, code: "gap", expect: 5 });
    const other = { ...batch(4, 4), entries: [pointEntry(7, 4)] };
    expect(await phone.ask("lane.append", other)).toEqual({ ok: false, code: "identity_conflict", n: 4 });
    expect(await phone.ask("lane.append", batch(5, 5, "log-0"))).toEqual({
      ok: false,
      code: "other_incarnation",
      incarnation: "log-1",
    });
    expect(await stored(world)).toHaveLength(5);
  });

  it("[LV5] reads pages of a long log, and what another node wrote when asked beyond its own end", async () => {
    const world = createWorld();
    const here = world.addNode();
    const there = world.addNode();
    const phone = here.connect("helper");
    await phone.ask("lane.open", open);
    for (let i = 0; i < 11; i += 1) await phone.ask("lane.append", batch(i * 50 + 1, i * 50 + 50));
    const coach = there.connect("coach");
    const first = await coach.ask("court.read", { matchId: "m1", after: 0 });
    expect(first).toMatchObject({ head: 551, more: true });
    expect(first.entries).toHaveLength(500);
    expect(await coach.ask("court.read", { matchId: "m1", after: 500 })).toMatchObject({ more: false });
    await phone.ask("lane.append", batch(551, 560));
    const beyond = await coach.ask("court.read", { matchId: "m1", after: 555 });
    expect((beyond.entries as LoggedEntry[]).map((e) => e.pos)).toEqual([556, 557, 558, 559, 560, 561]);
  });

  it("[LV4] an append that breaks off is answered `unavailable`, and the next one is served", async () => {
    const world = createWorld();
    let broken = true;
    const { connect, faults } = world.addNode({
      append: async (append) => {
        if (broken) throw new Error("bug: broken on purpose");
        return world.store.append(append);
      },
    });
    const phone = connect("helper");
    await phone.ask("lane.open", open);
    expect(await phone.ask("lane.append", batch(1, 1))).toEqual({
      ok: false,
      code: "unavailable",
      retry: true,
    });
    expect(faults[0]?.facts).toMatchObject({ matchId: "m1", pos: 1 });
    broken = false;
    expect(await phone.ask("lane.append", batch(1, 1))).toMatchObject({ ok: true, upTo: 1 });
  });

  it("[LV13] after a restore the room forgets, reads anew, and phones fill the log again", async () => {
    const world = createWorld();
    let store = world.store;
    const { connect, live } = world.addNode({
      incarnation: () => store.incarnation(),
      read: (read) => store.read(read),
      head: (ref) => store.head(ref),
      heads: (since) => store.heads(since),
      openMatch: (match) => store.openMatch(match),
      openLane: (lane) => store.openLane(lane),
      append: (append) => store.append(append),
    });
    const phone = connect("helper");
    await phone.ask("lane.open", open);
    await phone.ask("lane.append", batch(1, 10));
    store = createMemoryStore(world.time.clock.wallMs, "log-2");
    await world.time.advance(2_100);
    expect(live.directory.findMatch(M1)?.pos()).toBe(0);
    expect(await phone.ask("lane.append", batch(11, 12))).toMatchObject({ code: "unknown_lane" });
    expect(await phone.ask("lane.open", open)).toMatchObject({ incarnation: "log-2", cursor: 0, head: 1 });
    expect(await phone.ask("lane.append", batch(11, 12, "log-1"))).toMatchObject({
      code: "other_incarnation",
    });
    expect(await phone.ask("lane.append", batch(11, 12, "log-2"))).toMatchObject({ code: "gap", expect: 1 });
    expect(await phone.ask("lane.append", batch(1, 12, "log-2"))).toMatchObject({
      ok: true,
      upTo: 12,
      head: 13,
    });
  });
});
