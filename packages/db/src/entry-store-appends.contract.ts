import { expect, it } from "vitest";
import type { Appended, MatchRef } from "./entry-store.ts";
import { entryOf, item, items } from "./testing/log-fixtures.ts";
import { ACADEMY, type StoreBench } from "./testing/store-bench.ts";

/** What a batch of a lane, or an entry of the desk, does to the log. Part of the contract of every entry store. */
export function appendsContract({ store, newMatch, openLane, readAll }: StoreBench): void {
  it("[ES4] commits a batch in order, dense after the head, and hands back what it logged", async () => {
    const lane = await openLane();
    const appended = await store().append({ ...lane, items: items("lead", 1, 3) });
    const logged = [1, 2, 3].map((n) => ({
      pos: n + 1,
      laneId: "lead",
      epoch: 1,
      entry: entryOf("lead", n),
    }));
    expect(appended).toEqual({ ok: true, value: { kind: "appended", upTo: 3, head: 4, logged } });
    expect((await readAll(lane)).slice(1)).toEqual(logged);
  });

  it("[ES5] takes a batch again without writing, in whole or in part", async () => {
    const lane = await openLane();
    await store().append({ ...lane, items: items("lead", 1, 3) });
    expect(await store().append({ ...lane, items: items("lead", 2, 3) })).toEqual({
      ok: true,
      value: { kind: "duplicate", upTo: 3, head: 4, logged: [] },
    });
    const rest = await store().append({ ...lane, items: items("lead", 2, 5) });
    expect(rest).toMatchObject({ ok: true, value: { kind: "appended", upTo: 5, head: 6 } });
    expect(rest.ok ? rest.value.logged.map(({ entry }) => entry.n) : []).toEqual([4, 5]);
  });

  it("[ES6] knows an entry again whatever the order of its members", async () => {
    const lane = await openLane();
    await store().append({ ...lane, items: [item("lead", 1)] });
    const { body, ...rest } = entryOf("lead", 1);
    const turned = { body, ...Object.fromEntries(Object.entries(rest).reverse()) } as typeof rest & {
      body: typeof body;
    };
    expect(await store().append({ ...lane, items: [{ n: 1, entry: turned }] })).toMatchObject({
      value: { kind: "duplicate" },
    });
  });

  it("[ES7] answers a hole with the number it needs, and writes nothing of that batch", async () => {
    const lane = await openLane();
    await store().append({ ...lane, items: items("lead", 1, 2) });
    expect(await store().append({ ...lane, items: items("lead", 5, 6) })).toEqual({
      ok: false,
      error: { code: "gap", expect: 3 },
    });
    const holed = [item("lead", 3), item("lead", 5)];
    expect(await store().append({ ...lane, items: holed })).toEqual({
      ok: false,
      error: { code: "gap", expect: 4 },
    });
    expect(await readAll(lane)).toHaveLength(3);
  });

  it("[ES8] refuses another entry under a number that is taken, and an id that is taken", async () => {
    const lane = await openLane();
    await store().append({ ...lane, items: items("lead", 1, 2) });
    expect(await store().append({ ...lane, items: [item("lead", 2, "-other")] })).toEqual({
      ok: false,
      error: { code: "identity_conflict", n: 2 },
    });
    const sameId = { n: 3, entry: { ...entryOf("lead", 3), id: entryOf("lead", 1).id } };
    expect(await store().append({ ...lane, items: [sameId] })).toEqual({
      ok: false,
      error: { code: "identity_conflict", n: 3 },
    });
    const twice = [item("lead", 3), { n: 4, entry: { ...entryOf("lead", 4), id: entryOf("lead", 3).id } }];
    expect(await store().append({ ...lane, items: twice })).toEqual({
      ok: false,
      error: { code: "identity_conflict", n: 4 },
    });
    expect(await readAll(lane)).toHaveLength(3);
  });

  it("[ES9] keeps a rejected item aside, goes on after it, and knows it again", async () => {
    const lane = await openLane();
    const rejected = {
      n: 2,
      rejected: { code: "bad_shape", raw: { body: "?\u0000\ud800", n: 2 } },
    } as const;
    const batch = [item("lead", 1), rejected, item("lead", 3)];
    const first = await store().append({ ...lane, items: batch });
    expect(first).toMatchObject({ ok: true, value: { kind: "appended", upTo: 3, head: 3 } });
    expect((await readAll(lane)).map(({ pos, entry }) => [pos, entry.n])).toEqual([
      [1, 1],
      [2, 1],
      [3, 3],
    ]);
    expect(await store().append({ ...lane, items: batch })).toMatchObject({
      value: { kind: "duplicate", upTo: 3 },
    });
    const other = { n: 2, rejected: { code: "bad_shape", raw: "another" } } as const;
    expect(await store().append({ ...lane, items: [other] })).toMatchObject({
      error: { code: "identity_conflict", n: 2 },
    });
  });

  it("[ES9] keeps a rejected item that is nested beyond measure", async () => {
    const lane = await openLane();
    const raw: unknown = JSON.parse(`${"[".repeat(14_000)}${"]".repeat(14_000)}`);
    const batch = [{ n: 1, rejected: { code: "bad_shape", raw } } as const];
    expect(await store().append({ ...lane, items: batch })).toMatchObject({
      ok: true,
      value: { kind: "appended", upTo: 1, head: 1, logged: [] },
    });
  });

  it("[ES4] appends to lanes that are open, and to nothing else", async () => {
    const lane = await openLane();
    const append = (match: MatchRef, laneId: string) =>
      store().append({ ...match, laneId, items: [item("x", 1)] });
    expect(await append(lane, "never-opened")).toEqual({ ok: false, error: { code: "unknown_lane" } });
    expect(await append(lane, "desk")).toEqual({ ok: false, error: { code: "unknown_lane" } });
    expect(await append(await newMatch(), "lead")).toEqual({ ok: false, error: { code: "unknown_lane" } });
    const nowhere = { academyId: ACADEMY, matchId: "nowhere" };
    expect(await append(nowhere, "lead")).toEqual({ ok: false, error: { code: "unknown_match" } });
  });

  it("[ES4] gives each pos once when many batches come at the same time", async () => {
    const lane = await openLane();
    const sizes = [1, 3, 7, 2, 12, 5, 9, 4];
    const batches = sizes.map((to) => store().append({ ...lane, items: items("lead", 1, to) }));
    const desks = sizes.map((_, i) =>
      store().appendDesk({ ...lane, body: { kind: "PointReplayed" }, entryId: `desk-${i}` }),
    );
    const answers = await Promise.all([...batches, ...desks]);
    const logged = answers.flatMap((answer) => (answer.ok ? (answer.value as Appended).logged : []));
    expect(answers.every(({ ok }) => ok)).toBe(true);
    expect(logged).toHaveLength(12 + sizes.length);
    const entries = await readAll(lane);
    expect(entries.map(({ pos }) => pos)).toEqual(Array.from({ length: 13 + sizes.length }, (_, i) => i + 1));
    expect(entries.filter(({ laneId }) => laneId === "lead").map(({ entry }) => entry.n)).toEqual(
      Array.from({ length: 12 }, (_, i) => i + 1),
    );
  });

  it("[ES10] writes for the desk with epoch 0, once per id", async () => {
    const lane = await openLane();
    const entry = { ...lane, body: { kind: "PointReplayed" }, entryId: "desk-entry" } as const;
    expect(await store().appendDesk(entry)).toMatchObject({
      ok: true,
      value: { kind: "appended", upTo: 2, head: 2, logged: [{ pos: 2, laneId: "desk", epoch: 0 }] },
    });
    expect(await store().appendDesk(entry)).toEqual({
      ok: true,
      value: { kind: "duplicate", upTo: 2, head: 2, logged: [] },
    });
    expect(await store().appendDesk({ ...entry, ...(await newMatch()) })).toEqual({
      ok: false,
      error: { code: "not_open" },
    });
  });
}
