import type { AlertKey, AlertLine, AlertMark, AlertMarkReply, AlertsWatchReply } from "@courtloom/protocol";
import { DOWN, UP } from "@courtloom/protocol/names";
import { describe, expect, it } from "vitest";
import { alertKeyText } from "./alert-key-text.ts";
import { alertLine } from "./alert-sample.ts";
import { type MarkStore, memoryMarks } from "./mark-sender.ts";
import { createAlertsMirror } from "./mirror-alerts.ts";
import { createBench } from "./mirror-bench.ts";

const DAY = "day-1";
const MEMBERS = [{ memberId: "maren", name: "Maren H." }];

/** A server that holds the alerts, and answers marks as it is told to. */
const createServer = (...alerts: AlertLine[]) => {
  const server = {
    alerts: alerts as readonly AlertLine[],
    notices: [] as readonly AlertKey[],
    serverMs: 1_750_000_000_000,
    refusal: undefined as AlertsWatchReply | undefined,
    markReplies: [] as AlertMarkReply[],
    marks: [] as AlertMark[],
    answer: (event: string, message: unknown): AlertsWatchReply | AlertMarkReply => {
      if (event === UP.alertMark) {
        server.marks.push(message as AlertMark);
        return server.markReplies.shift() ?? { ok: true };
      }
      const { serverMs, notices } = server;
      return (
        server.refusal ?? {
          ok: true,
          dayId: DAY,
          serverMs,
          alerts: server.alerts,
          notices,
          members: MEMBERS,
        }
      );
    },
    list: (...now: AlertLine[]) => {
      server.serverMs += 1;
      server.alerts = now;
      return { dayId: DAY, serverMs: server.serverMs, alerts: now };
    },
  };
  return server;
};

const start = async (server: ReturnType<typeof createServer>, kept?: MarkStore) => {
  const bench = createBench(server.answer as (event: string, message: never) => unknown);
  const { channel, deps } = bench;
  const mirror = createAlertsMirror({ channel, dayId: DAY, deps, ...(kept ? { kept } : {}) });
  await bench.settle();
  return { bench, mirror };
};

const [one, two] = [alertLine(1), alertLine(2, { strength: 0.6 })];
const textOf = ({ key }: AlertLine) => alertKeyText(key);

describe("alerts mirror", () => {
  it("[AS1] takes the snapshot, then each list, and no list of another day or older than what it holds", async () => {
    const server = createServer(one);
    const { bench, mirror } = await start(server);
    expect(mirror.get()).toMatchObject({ state: "live", alerts: { members: MEMBERS } });
    expect(mirror.get().alerts.order).toEqual([textOf(one)]);
    const late = server.list(one);
    bench.push(DOWN.alerts, server.list(one, two));
    bench.push(DOWN.alerts, late);
    bench.push(DOWN.alerts, { ...server.list(), dayId: "another" });
    expect(mirror.get().alerts.order).toEqual([textOf(one), textOf(two)]);
  });

  it("[AS1] watches again after a reconnect and believes the new subscription whatever its clock says", async () => {
    const server = createServer(one);
    const { bench, mirror } = await start(server);
    bench.become("lost");
    expect(mirror.get()).toMatchObject({ state: "stale", reachable: false });
    expect(mirror.get().alerts.order).toEqual([textOf(one)]);
    server.alerts = [two];
    server.serverMs -= 60_000;
    bench.become("open");
    await bench.settle();
    expect(mirror.get().state).toBe("live");
    expect(mirror.get().alerts.order).toEqual([textOf(two)]);
  });

  it("[AS1] says that it was refused, and comes back where that may be tried again", async () => {
    const server = createServer(one);
    server.refusal = { ok: false, code: "forbidden", retry: false };
    const { mirror } = await start(server);
    expect(mirror.get()).toMatchObject({ state: "refused", refusal: "forbidden" });

    const busy = createServer(one);
    busy.refusal = { ok: false, code: "busy", retry: true, afterMs: 2_000 };
    const { bench, mirror: waits } = await start(busy);
    expect(waits.get().state).toBe("loading");
    busy.refusal = undefined;
    await bench.pass(3_000);
    expect(waits.get().alerts.order).toEqual([textOf(one)]);
  });

  it("[AS2] keeps the identity of an alert that did not change and tells only of those that did", async () => {
    const server = createServer(one, two);
    const { bench, mirror } = await start(server);
    const [held, order] = [mirror.get().alerts.lines.get(textOf(one)), mirror.get().alerts.order];
    const told = { one: 0, two: 0 };
    mirror.subscribeAlert(textOf(one), () => (told.one += 1));
    const stop = mirror.subscribeAlert(textOf(two), () => (told.two += 1));
    bench.push(DOWN.alerts, server.list({ ...one }, { ...two, state: "easing" }));
    expect(told).toEqual({ one: 0, two: 1 });
    expect(mirror.get().alerts.lines.get(textOf(one))).toBe(held);
    expect(mirror.get().alerts.order).toBe(order);
    stop();
    bench.push(DOWN.alerts, server.list(one));
    expect(told).toEqual({ one: 0, two: 1 });
  });

  it("[AS5] holds what the person is told of, each once, from the snapshot and from messages", async () => {
    const server = createServer(one, two);
    server.notices = [one.key];
    const { bench, mirror } = await start(server);
    bench.push(DOWN.alertNotices, { dayId: DAY, notices: [one.key, two.key] });
    bench.push(DOWN.alertNotices, { dayId: "another", notices: [alertLine(3).key] });
    bench.become("lost");
    bench.become("open");
    await bench.settle();
    expect(mirror.get().alerts.told).toEqual([one.key, two.key]);
  });

  it("[AS3] shows a mark as unsent until it is acknowledged and the list has it", async () => {
    const server = createServer(one);
    const { bench, mirror } = await start(server);
    const told: string[] = [];
    mirror.subscribeAlert(textOf(one), () =>
      told.push(
        mirror
          .get()
          .marks.map(({ status }) => status)
          .join(),
      ),
    );
    mirror.mark(one.key, { kind: "seen" });
    expect(mirror.get().marks).toMatchObject([{ status: "unsent", mark: { kind: "seen" } }]);
    await bench.settle();
    expect(server.marks).toMatchObject([{ key: one.key, mark: { kind: "seen" } }]);
    // The acknowledgement has the list read again.
    expect(mirror.get().marks).toEqual([]);
    expect(told).toEqual(["unsent", "taken", ""]);
  });

  it("[AS3] sends a mark made without a connection when it is back, and tries again while the server is busy", async () => {
    const server = createServer(one);
    const { bench, mirror } = await start(server);
    bench.become("lost");
    mirror.mark(one.key, { kind: "useful", useful: true });
    await bench.settle();
    expect(server.marks).toEqual([]);
    server.markReplies = [{ ok: false, code: "busy", retry: true, afterMs: 2_000 }];
    bench.become("open");
    await bench.settle();
    expect(mirror.get().marks).toMatchObject([{ status: "unsent" }]);
    await bench.pass(3_000);
    await bench.settle();
    expect(server.marks).toHaveLength(2);
    expect(mirror.get().marks).toEqual([]);
  });

  it("[AS3] keeps unsent marks through a reload", async () => {
    const kept = memoryMarks();
    const server = createServer(one);
    const first = await start(server, kept);
    first.bench.become("lost");
    first.mirror.mark(one.key, { kind: "snooze", reason: "Talked at the change", until: "set" });
    first.mirror.close();
    const second = await start(server, kept);
    expect(server.marks).toMatchObject([{ mark: { kind: "snooze", reason: "Talked at the change" } }]);
    expect(second.mirror.get().marks).toEqual([]);
    expect(kept.all()).toEqual([]);
  });

  it("[AS4] of one alert's words on one matter only the last is sent; others are not touched", async () => {
    const server = createServer(one);
    const { bench, mirror } = await start(server);
    bench.become("lost");
    mirror.mark(one.key, { kind: "snooze", reason: "Rain is near", until: "match" });
    mirror.mark(one.key, { kind: "seen" });
    mirror.mark(one.key, { kind: "wake" });
    bench.become("open");
    await bench.settle();
    expect(server.marks.map(({ mark }) => mark.kind)).toEqual(["seen", "wake"]);
  });

  it("[AS4] sends the last word also when the one before it is on its way", async () => {
    const server = createServer(one);
    const { bench, mirror } = await start(server);
    mirror.mark(one.key, { kind: "useful", useful: true });
    mirror.mark(one.key, { kind: "useful", useful: false });
    await bench.settle();
    expect(server.marks.map(({ mark }) => mark)).toEqual([
      { kind: "useful", useful: true },
      { kind: "useful", useful: false },
    ]);
    expect(mirror.get().marks).toEqual([]);
  });

  it("[AS4] keeps a refused mark with its reason until somebody has read it", async () => {
    const kept = memoryMarks();
    const server = createServer(one);
    server.markReplies = [{ ok: false, code: "forbidden", retry: false }];
    const { bench, mirror } = await start(server, kept);
    mirror.mark(one.key, { kind: "assign", memberId: "maren" });
    await bench.settle();
    const [refused] = mirror.get().marks;
    expect(refused).toMatchObject({ status: "refused", refusal: "forbidden" });
    expect(kept.all()).toHaveLength(1);
    mirror.dismiss(refused?.id ?? "");
    expect(mirror.get().marks).toEqual([]);
    expect(kept.all()).toEqual([]);
  });
});
