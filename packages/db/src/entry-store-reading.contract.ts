import { expect, it } from "vitest";
import { items, laneOf } from "./testing/log-fixtures.ts";
import { ACADEMY, type StoreBench } from "./testing/store-bench.ts";

/** Sealing, reading, heads, hints and the last word of each phone. Part of the contract of every entry store. */
export function readingContract({ store, newMatch, openMatch, openLane }: StoreBench): void {
  it("[ES11] seals once; a lane that exists still brings what it charted, a new one is refused", async () => {
    const lane = await openLane();
    await store().append({ ...lane, items: items("lead", 1, 2) });
    expect(await store().sealMatch(lane)).toMatchObject({ value: { kind: "appended", head: 4 } });
    expect(await store().sealMatch(lane)).toMatchObject({ value: { kind: "duplicate", head: 4 } });
    expect(await store().head(lane)).toMatchObject({ value: { sealed: true, pos: 4 } });
    expect(await store().openLane(laneOf(ACADEMY, lane.matchId, "lead"))).toMatchObject({ ok: true });
    expect(await store().append({ ...lane, items: items("lead", 3, 3) })).toMatchObject({
      value: { kind: "appended", upTo: 3, head: 5 },
    });
    const sealedEarly = await openMatch();
    await store().sealMatch(sealedEarly);
    expect(await store().openLane(laneOf(ACADEMY, sealedEarly.matchId, "lead"))).toEqual({
      ok: false,
      error: { code: "sealed" },
    });
  });

  it("[ES12] reads pages, the end, and a match that is not open", async () => {
    const lane = await openLane();
    await store().append({ ...lane, items: items("lead", 1, 5) });
    const page = await store().read({ ...lane, after: 2, limit: 3 });
    expect(page.ok ? page.value.entries.map(({ pos }) => pos) : []).toEqual([3, 4, 5]);
    expect(page).toMatchObject({ value: { head: 6 } });
    expect(await store().read({ ...lane, after: 6, limit: 3 })).toEqual({
      ok: true,
      value: { entries: [], head: 6 },
    });
    expect(await store().read({ ...(await newMatch()), after: 0, limit: 3 })).toEqual({
      ok: true,
      value: { entries: [], head: 0 },
    });
  });

  it("[ES13] tells which heads changed since it was asked", async () => {
    const lane = await openLane();
    const first = await store().heads();
    if (!first.ok) throw new Error("no heads");
    expect(first.value.heads).toContainEqual(
      expect.objectContaining({
        ...{ academyId: ACADEMY, matchId: lane.matchId },
        pos: 1,
        leadLaneId: "lead",
      }),
    );
    await store().append({ ...lane, items: items("lead", 1, 2) });
    await store().sealMatch(lane);
    const next = await store().heads(first.value.next);
    const changed = next.ok ? next.value.heads.find(({ matchId }) => matchId === lane.matchId) : undefined;
    const head = await store().head(lane);
    expect(changed).toEqual(head.ok ? head.value : undefined);
    expect(changed).toMatchObject({ pos: 4, sealed: true, chartist: "chartist of lead", level: "key" });
    const open = await store().heads();
    expect(open.ok && open.value.heads.some(({ matchId }) => matchId === lane.matchId)).toBe(false);
  });

  it("[ES13] has a head for a match that waits", async () => {
    const match = await newMatch();
    expect(await store().head(match)).toMatchObject({
      ok: true,
      value: { ...match, pos: 0, epoch: 0, leadLaneId: null, chartist: null, sealed: false, heardMs: null },
    });
    expect(await store().head({ academyId: ACADEMY, matchId: "nowhere" })).toEqual({
      ok: false,
      error: { code: "unknown_match" },
    });
  });

  it("[ES14] tells listeners of the highest pos, until they stop", async () => {
    const heard = new Map<string, number>();
    let wake = (): void => undefined;
    const until = (key: string, pos: number) =>
      new Promise<void>((resolve) => {
        wake = () => heard.get(key) === pos && resolve();
        wake();
      });
    const listening = await store().listen(({ matchId, pos }) => {
      heard.set(matchId, pos);
      wake();
    });
    if (!listening.ok) throw new Error("not listening");
    for (const pos of [2, 3, 4]) store().notify({ matchId: "hinted", pos });
    await until("hinted", 4);
    await listening.value();
    const again = await store().listen(({ matchId, pos }) => {
      heard.set(`again ${matchId}`, pos);
      wake();
    });
    store().notify({ matchId: "hinted", pos: 5 });
    await until("again hinted", 5);
    expect(heard.get("hinted")).toBe(4);
    await (again.ok ? again.value() : undefined);
  });

  it("[ES16] keeps the latest word of each phone", async () => {
    const lane = await openLane();
    const word = (heardMs: number, unsent: number) => ({
      academyId: ACADEMY,
      matchId: lane.matchId,
      heardMs,
      unsent,
    });
    const nowhere = { academyId: ACADEMY, matchId: "nowhere", heardMs: 1, unsent: 1 };
    await store().recordHeard([word(1_780_000_000_500, 3), word(1_780_000_000_400, 9), nowhere]);
    expect(await store().head(lane)).toMatchObject({
      value: { heardMs: 1_780_000_000_500, unsent: 3 },
    });
    await store().recordHeard([word(1_780_000_000_450, 7)]);
    expect(await store().head(lane)).toMatchObject({
      value: { heardMs: 1_780_000_000_500, unsent: 3 },
    });
    await store().recordHeard([word(1_780_000_000_600, 0)]);
    expect(await store().head(lane)).toMatchObject({
      value: { heardMs: 1_780_000_000_600, unsent: 0 },
    });
  });
}
