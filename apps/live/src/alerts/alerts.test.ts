import { PROTOCOL_VERSION } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import {
  chartOn,
  correction,
  createAlertDay,
  idOf,
  listsTold,
  madeLineBall,
  noticesTold,
  tileAlertsTold,
} from "../testing/alert-day.ts";

const KEY = { matchId: "m1", playerId: "m1-A", rate: "lineMissed", version: 1, episode: 1 } as const;
const voided = (n: number, of: number) => correction(n, { kind: "EntryVoided", target: idOf(of) });

describe("a day's alerts", () => {
  it("[AL17, AL22] are told to staff who follow the day, with figures, place and name", async () => {
    const world = createAlertDay();
    const node = world.addNode();
    const coach = node.connect("coach");
    expect(await coach.ask("alerts.watch", { dayId: "d1" })).toMatchObject({
      ok: true,
      dayId: "d1",
      alerts: [],
      notices: [],
      members: [
        { memberId: "mb1", name: "Maren H." },
        { memberId: "mb2", name: "Tobias A." },
      ],
    });
    const { miss } = await chartOn(node);
    await miss(1, 4);
    await world.time.advance(600);
    const [line] = listsTold(coach).at(-1) ?? [];
    expect(line).toMatchObject({
      key: KEY,
      courtId: "c1",
      courtNo: 1,
      side: "A",
      name: "Noor V.",
      state: "standing",
      match: { x: 4, n: 4, offPlan: 0, high: 1 },
      since: { x: 4, n: 4, set: 1, games: [0, 0] },
      usual: 0.25,
      source: "own",
      strength: 1,
      bothOwn: false,
      marks: { seen: [], useful: [] },
    });
    expect(line?.match.low).toBeCloseTo(0.51, 2);
  });

  it("[AL5, AL6] are noticed at a change of ends, once, and not before", async () => {
    const world = createAlertDay();
    const node = world.addNode();
    const coach = node.connect("coach");
    await coach.ask("alerts.watch", { dayId: "d1" });
    const { miss, send } = await chartOn(node);
    // The first game goes on, so that the raise comes inside a game.
    await send([madeLineBall(1)]);
    await miss(2, 4);
    await world.time.advance(600);
    expect(listsTold(coach)).toEqual([]);
    await miss(5, 5);
    await world.time.advance(600);
    // The raise ended the first game: ends are changed.
    expect(noticesTold(coach)).toEqual([KEY]);
    await miss(6, 14);
    await world.time.advance(5_000);
    expect(noticesTold(coach)).toEqual([KEY]);
    const again = node.connect("coach");
    expect(await again.ask("alerts.watch", { dayId: "d1" })).toMatchObject({ notices: [] });
  });

  it("[AL5] of a raise inside a game wait for the next change of ends, also over a restart", async () => {
    const world = createAlertDay();
    const first = world.addNode();
    const coach = first.connect("coach");
    await coach.ask("alerts.watch", { dayId: "d1" });
    const { send, miss } = await chartOn(first);
    await send([madeLineBall(1), madeLineBall(2), madeLineBall(3), madeLineBall(4), madeLineBall(5)]);
    await miss(6, 8);
    await world.time.advance(600);
    await miss(9, 9);
    await world.time.advance(600);
    expect(noticesTold(coach)).toEqual([]);
    expect(listsTold(coach).at(-1)).toMatchObject([{ key: KEY, state: "standing" }]);
    await first.live.stop();
    const second = world.addNode();
    const back = second.connect("coach");
    expect(await back.ask("alerts.watch", { dayId: "d1" })).toMatchObject({
      notices: [],
      alerts: [{ key: KEY }],
    });
    const again = await chartOn(second);
    await again.miss(10, 13);
    await world.time.advance(600);
    expect(noticesTold(back)).toEqual([KEY]);
  });

  it("[AL2, AL3] are withdrawn with the correction that took the evidence, and never noticed again", async () => {
    const world = createAlertDay();
    const node = world.addNode();
    const coach = node.connect("coach");
    await coach.ask("alerts.watch", { dayId: "d1" });
    await coach.ask("board.watch", { dayId: "d1", view: "staff" });
    const { miss, send } = await chartOn(node);
    await miss(1, 4);
    await world.time.advance(600);
    await send([voided(5, 3)]);
    await world.time.advance(600);
    expect(listsTold(coach).at(-1)).toMatchObject([
      {
        key: KEY,
        state: "withdrawn",
        match: { x: 4, n: 4 },
        withdrawn: { chartist: "Dana H.", entryId: idOf(5) },
      },
    ]);
    await send([correction(6, { kind: "EntryRestored", target: idOf(3) })]);
    await world.time.advance(600);
    expect(
      listsTold(coach)
        .at(-1)
        ?.map(({ key, state }) => [key.episode, state]),
    ).toEqual([
      [2, "standing"],
      [1, "withdrawn"],
    ]);
    expect(noticesTold(coach).map(({ episode }) => episode)).toEqual([1, 2]);
  });

  it("[AL24] are on staff tiles, the gravest first, from the first sign to the withdrawal", async () => {
    const world = createAlertDay();
    const node = world.addNode();
    const coach = node.connect("coach");
    await coach.ask("board.watch", { dayId: "d1", view: "staff" });
    const { miss, send } = await chartOn(node);
    await miss(1, 1);
    await world.time.advance(600);
    expect(tileAlertsTold(coach).at(-1)).toBeUndefined();
    await miss(2, 3);
    await world.time.advance(600);
    expect(tileAlertsTold(coach).at(-1)).toEqual([{ side: "A", state: "noticed", since: "0–0" }]);
    await miss(4, 5);
    await world.time.advance(600);
    expect(tileAlertsTold(coach).at(-1)).toEqual([{ side: "A", state: "standing", since: "0–0" }]);
    await send([voided(6, 4), voided(7, 5)]);
    await world.time.advance(600);
    expect(
      tileAlertsTold(coach)
        .at(-1)
        ?.map(({ state }) => state),
    ).toContain("noticed");
  });

  it("[AL23] between two own players go to the director alone, on the list, the board and as notices", async () => {
    const world = createAlertDay();
    world.day.coaching = { mode: "practice", bothOwn: true };
    const node = world.addNode();
    const [coach, director] = [node.connect("coach"), node.connect("director")];
    for (const peer of [coach, director]) {
      await peer.ask("alerts.watch", { dayId: "d1" });
      await peer.ask("board.watch", { dayId: "d1", view: "staff" });
    }
    const { miss } = await chartOn(node);
    await miss(1, 5);
    await world.time.advance(600);
    expect(listsTold(director).at(-1)).toMatchObject([{ key: KEY, bothOwn: true }]);
    expect([noticesTold(director), noticesTold(coach)]).toEqual([[KEY], []]);
    expect(listsTold(coach).flat()).toEqual([]);
    expect(tileAlertsTold(director).at(-1)).toMatchObject([{ state: "standing" }]);
    expect(tileAlertsTold(coach).every((alerts) => alerts === undefined)).toBe(true);
    const mark = { key: KEY, mark: { kind: "seen" } };
    expect(await coach.ask("alert.mark", mark)).toMatchObject({ code: "unknown_match" });
    expect(await director.ask("alert.mark", mark)).toEqual({ ok: true });
    const assign = { key: KEY, mark: { kind: "assign", memberId: "mb2" } };
    expect(await director.ask("alert.mark", assign)).toMatchObject({ code: "forbidden" });
  });

  it("[AL25] never reach a wall or a court's phone", async () => {
    const world = createAlertDay();
    const node = world.addNode();
    const [wall, other] = [node.connect("wall"), node.connect("helper")];
    const replies = [
      await wall.ask("board.watch", { dayId: "d1", view: "wall" }),
      await other.ask("court.watch", { matchId: "m1", after: 0 }),
    ];
    const { phone, miss, send } = await chartOn(node);
    await node.connect("coach").ask("alerts.watch", { dayId: "d1" });
    replies.push(await miss(1, 6));
    replies.push(await send([voided(7, 2), voided(8, 3)]));
    await world.time.advance(5_000);
    for (const peer of [wall, other, phone]) {
      expect(await peer.ask("alerts.watch", { dayId: "d1" })).toMatchObject({ code: "forbidden" });
      expect(await peer.ask("alert.mark", { key: KEY, mark: { kind: "seen" } })).toMatchObject({
        code: "forbidden",
      });
    }
    const received = JSON.stringify([replies, wall.told, other.told, phone.told]);
    expect(received).toContain("board.tile");
    expect(received).not.toMatch(/alert|noticed|standing|withdrawn|usual|horizon|strength/);
  });
});

const raised = async () => {
  const world = createAlertDay();
  const node = world.addNode();
  const coach = node.connect("coach");
  await coach.ask("alerts.watch", { dayId: "d1" });
  const charting = await chartOn(node);
  await charting.miss(1, 4);
  await world.time.advance(600);
  const mark = async (asked: object, peer = coach) => {
    const reply = await peer.ask("alert.mark", { key: KEY, mark: asked });
    await world.time.advance(600);
    return { reply, marks: listsTold(coach).at(-1)?.[0]?.marks };
  };
  return { world, node, coach, mark, ...charting };
};

describe("what is done about an alert", () => {
  it("[AL20] is shown to everybody with name and time, and said twice is said once", async () => {
    const { mark, node, world } = await raised();
    expect(await mark({ kind: "seen" })).toMatchObject({
      reply: { ok: true },
      marks: { seen: [{ memberId: "mb2", name: "Tobias A." }] },
    });
    await mark({ kind: "seen" });
    await mark({ kind: "useful", useful: false });
    const director = node.connect("director");
    await mark({ kind: "assign", memberId: "mb2" }, director);
    expect(await mark({ kind: "useful", useful: true })).toMatchObject({
      marks: {
        seen: [{ memberId: "mb2" }],
        assigned: { memberId: "mb2", name: "Tobias A.", by: { memberId: "mb1" } },
        useful: [{ memberId: "mb2", useful: true }],
      },
    });
    expect((await mark({ kind: "assign", memberId: null })).marks?.assigned).toBeUndefined();
    const day = await world.alerts.dayAlerts({ academyId: "curlew", dayId: "d1" });
    expect(day.ok && day.value[0]?.marks).toHaveLength(5);
  });

  it("[AL21] snoozed it is not noticed; a snooze for the set ends with the set, one for the match stays", async () => {
    const { mark, miss, world, coach } = await raised();
    const snooze = { kind: "snooze", reason: "Talks at the end of the set", until: "set" };
    expect((await mark(snooze)).marks?.snoozed).toMatchObject({
      name: "Tobias A.",
      reason: snooze.reason,
      until: "set",
    });
    await mark({ kind: "wake" });
    expect((await mark({ ...snooze, until: "match" })).marks?.snoozed?.until).toBe("match");
    expect((await mark(snooze)).marks?.snoozed?.until).toBe("set");
    await miss(5, 24);
    await world.time.advance(600);
    expect(listsTold(coach).at(-1)?.[0]).toMatchObject({ state: "standing", marks: { seen: [] } });
    expect(listsTold(coach).at(-1)?.[0]?.marks.snoozed).toBeUndefined();
  });

  it("[AL21] snoozed before ends are changed the notice waits until it is woken", async () => {
    const world = createAlertDay();
    const node = world.addNode();
    const coach = node.connect("coach");
    const { send, miss } = await chartOn(node);
    await send([madeLineBall(1), madeLineBall(2), madeLineBall(3), madeLineBall(4), madeLineBall(5)]);
    await miss(6, 9);
    await coach.ask("alerts.watch", { dayId: "d1" });
    await coach.ask("alert.mark", { key: KEY, mark: { kind: "snooze", reason: "Later", until: "match" } });
    await miss(10, 13);
    await world.time.advance(600);
    expect(noticesTold(coach)).toEqual([]);
    await coach.ask("alert.mark", { key: KEY, mark: { kind: "wake" } });
    await world.time.advance(600);
    expect(noticesTold(coach)).toEqual([KEY]);
  });

  it("[AL18] reaches those who follow the day on another node within two seconds", async () => {
    const { world, mark } = await raised();
    const there = world.addNode().connect("director");
    await there.ask("alerts.watch", { dayId: "d1" });
    await mark({ kind: "seen" });
    await world.time.advance(1_500);
    expect(listsTold(there).at(-1)?.[0]?.marks.seen).toMatchObject([{ name: "Tobias A." }]);
  });

  it("[AL20] of an alert that is not there, of another academy or ill-shaped is refused, and nothing is written", async () => {
    const { world, node, coach } = await raised();
    const stranger = node.connect("stranger");
    const seen = { kind: "seen" };
    const before = JSON.stringify(await world.alerts.dayAlerts({ academyId: "curlew", dayId: "d1" }));
    const asks: readonly [object, string][] = [
      [{ key: { ...KEY, episode: 2 }, mark: seen }, "unknown_match"],
      [{ key: { ...KEY, matchId: "m0" }, mark: seen }, "unknown_match"],
      [{ key: { ...KEY, matchId: "m9" }, mark: seen }, "unknown_match"],
      [{ key: { ...KEY, rate: "keptMissed" }, mark: seen }, "unknown_match"],
      [{ key: { ...KEY, rate: "constructor" }, mark: seen }, "bad_shape"],
      [{ key: { ...KEY, episode: 0 }, mark: seen }, "bad_shape"],
      [{ key: { ...KEY, episode: 1.5 }, mark: seen }, "bad_shape"],
      [{ key: { ...KEY, extra: 1 }, mark: seen }, "bad_shape"],
      [{ key: KEY, mark: { kind: "__proto__" } }, "bad_shape"],
      [{ key: KEY, mark: { kind: "seen", by: "mb1" } }, "bad_shape"],
      [{ key: KEY, mark: { kind: "snooze", reason: " ", until: "set" } }, "bad_shape"],
      [{ key: KEY, mark: { kind: "snooze", reason: "x".repeat(201), until: "set" } }, "bad_shape"],
      [{ key: KEY, mark: { kind: "snooze", reason: "Later", until: "ever" } }, "bad_shape"],
      [{ key: KEY, mark: { kind: "assign", memberId: "mb9" } }, "forbidden"],
      [{ key: KEY, mark: { kind: "useful", useful: "yes" } }, "bad_shape"],
      [{ key: KEY }, "bad_shape"],
      [{ mark: seen }, "bad_shape"],
      [{ v: PROTOCOL_VERSION + 1, key: KEY, mark: seen }, "new_version"],
    ];
    for (const [payload, code] of asks)
      expect([payload, await coach.ask("alert.mark", payload)]).toMatchObject([payload, { ok: false, code }]);
    expect(await stranger.ask("alert.mark", { key: KEY, mark: seen })).toMatchObject({
      code: "unknown_match",
    });
    expect(JSON.stringify(await world.alerts.dayAlerts({ academyId: "curlew", dayId: "d1" }))).toBe(before);
  });
});
