import type { EntryBody, LoggedEntry } from "@courtloom/match-log";
import type { LaneAppend, RefusalCode } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { stepLane } from "./lane-machine.ts";
import type { LaneRecord } from "./lane-record.ts";
import type { LaneAction, LaneEnv, LaneEvent, LaneState } from "./lane-state.ts";
import { laneStatus } from "./lane-status.ts";
import { startLane } from "./start-lane.ts";

const record: LaneRecord = {
  laneId: "lane-1",
  matchId: "match-1",
  courtName: "Court 1",
  chartist: "Ioan P.",
  names: { A: "Noor V.", B: "Elsbeth K." },
  level: "every",
  acked: 0,
  epoch: 0,
  rejected: [],
  startedWallMs: 1_000,
};
const body: EntryBody = { kind: "PointReplayed" };
const opening = { pos: 1, laneId: "desk", epoch: 0 } as LoggedEntry;
const opened = (cursor: number, incarnation = "inc-1") =>
  ({ ok: true, incarnation, epoch: 3, cursor, head: 1, opening, chartist: "Ioan P.", leads: true }) as const;
const appended = (upTo: number, rejected: readonly { n: number; code: "bad_shape" }[] = []) =>
  ({ ok: true, kind: "appended", upTo, head: upTo + 1, rejected }) as const;
const refusal = (code: RefusalCode, retry = false) => ({ ok: false, code, retry }) as const;

/** Drives a lane by hand: what it wants done piles up in `actions`. */
const makeBench = (from: LaneState = startLane(record, [])) => {
  let laneCount = 1;
  const env: LaneEnv = {
    random: () => 0.5,
    wallMs: () => 5_000,
    laneId: () => {
      laneCount += 1;
      return `lane-${laneCount}`;
    },
  };
  let state = from;
  let actions: LaneAction[] = [];
  const send = (event: LaneEvent) => {
    const step = stepLane(state, event, env);
    state = step.state;
    actions.push(...step.actions);
  };
  const take = <T extends LaneAction["type"]>(type: T) => {
    const found = actions.filter((a): a is Extract<LaneAction, { type: T }> => a.type === type);
    actions = actions.filter((a) => a.type !== type);
    return found;
  };
  const answerOpen = (reply: Extract<LaneEvent, { type: "openAnswered" }>["reply"]) => {
    for (const { request } of take("sendOpen")) send({ type: "openAnswered", request, reply });
  };
  const answerAppend = (reply: Extract<LaneEvent, { type: "appendAnswered" }>["reply"]) => {
    for (const { request } of take("sendAppend")) send({ type: "appendAnswered", request, reply });
  };
  const chart = (id: string) => send({ type: "charted", id, atMs: 10, wallMs: 20, body });
  const store = (safe = true) => {
    for (const { laneId, entry } of take("store")) send({ type: "stored", laneId, n: entry.n, safe });
  };
  const chartAndStore = (...ids: string[]) => {
    for (const id of ids) chart(id);
    store();
  };
  const goOnline = (cursor = 0) => {
    send({ type: "linkUp" });
    answerOpen(opened(cursor));
  };
  return { send, take, answerOpen, answerAppend, chart, store, chartAndStore, goOnline, state: () => state };
};

const sentNumbers = (messages: readonly { message: LaneAppend }[]) =>
  messages.map(({ message }) => message.entries.map((entry) => entry.n));

describe("a lane that charts", () => {
  it("[SY1] numbers entries from 1 and sends none before it is stored", () => {
    const bench = makeBench();
    bench.goOnline();
    bench.chart("a");
    bench.chart("b");
    expect(bench.take("sendAppend")).toEqual([]);
    expect(bench.state().entries).toEqual([]);
    bench.store();
    expect(bench.state().entries.map(({ n, id }) => [n, id])).toEqual([
      [1, "a"],
      [2, "b"],
    ]);
    expect(sentNumbers(bench.take("sendAppend"))).toEqual([[1]]);
  });

  it("[SY2] keeps one batch of at most 50 in flight", () => {
    const bench = makeBench();
    bench.chartAndStore(...Array.from({ length: 120 }, (_, i) => `e${i}`));
    bench.goOnline();
    const sizes: number[] = [];
    for (let upTo = 0; upTo < 120; ) {
      const sent = bench.take("sendAppend");
      expect(sent).toHaveLength(1);
      const count = sent[0]?.message.entries.length ?? 0;
      sizes.push(count);
      upTo += count;
      bench.send({ type: "appendAnswered", request: sent[0]?.request ?? 0, reply: appended(upTo) });
    }
    expect(sizes).toEqual([50, 50, 20]);
    expect(laneStatus(bench.state())).toMatchObject({ signal: "open", unsent: 0 });
  });

  it("[SY13] goes on when the phone cannot store, and says so", () => {
    const bench = makeBench();
    bench.goOnline();
    bench.chart("a");
    bench.store(false);
    expect(sentNumbers(bench.take("sendAppend"))).toEqual([[1]]);
    expect(laneStatus(bench.state()).unstored).toBe(true);
  });
});

describe("a lane and its server's answers", () => {
  it("[SY4] never believes a cursor upwards: what was not acknowledged is sent again", () => {
    const bench = makeBench();
    bench.chartAndStore("a", "b");
    bench.goOnline(2);
    expect(sentNumbers(bench.take("sendAppend"))).toEqual([[1, 2]]);
  });

  it("[SY4] counts only what was in the batch", () => {
    const bench = makeBench();
    bench.chartAndStore("a");
    bench.goOnline();
    bench.chartAndStore("b");
    bench.answerAppend({ ok: true, kind: "duplicate", upTo: 9, head: 9, rejected: [] });
    expect(bench.state().record.acked).toBe(1);
    expect(sentNumbers(bench.take("sendAppend"))).toEqual([[2]]);
  });

  it("[SY5] rewinds at a gap, also below what was acknowledged", () => {
    const bench = makeBench();
    bench.chartAndStore("a", "b", "c");
    bench.goOnline();
    bench.answerAppend(appended(3));
    bench.chartAndStore("d");
    bench.answerAppend({ ok: false, code: "gap", expect: 2 });
    expect(sentNumbers(bench.take("sendAppend"))).toEqual([[2, 3, 4]]);
  });

  it("[SY5] does not spin when told to send what it sent", () => {
    const bench = makeBench();
    bench.chartAndStore("a");
    bench.goOnline();
    bench.answerAppend({ ok: false, code: "gap", expect: 1 });
    expect(bench.take("sendAppend")).toEqual([]);
    expect(bench.take("retryIn")).toEqual([{ type: "retryIn", ms: 500 }]);
  });

  it("[SY6] carries on in a new lane when two entries have one number, and keeps both", () => {
    const bench = makeBench();
    bench.chartAndStore("a", "b", "c");
    bench.goOnline();
    bench.answerAppend({ ok: false, code: "identity_conflict", n: 2 });
    const [fork] = bench.take("fork");
    expect(fork?.closed).toMatchObject({ laneId: "lane-1", continuedBy: "lane-2" });
    expect(fork?.entries.map(({ n, id }) => [n, id])).toEqual([
      [1, "b"],
      [2, "c"],
    ]);
    expect(bench.take("sendOpen")).toEqual([]);
    bench.send({ type: "forkStored", laneId: "lane-2", count: 2, safe: true });
    bench.answerOpen(opened(0));
    const sent = bench.take("sendAppend");
    expect(sent.map(({ message }) => message.laneId)).toEqual(["lane-2"]);
    expect(sentNumbers(sent)).toEqual([[1, 2]]);
  });

  it("[SY6] carries on in a new lane when another page of this browser took the number", () => {
    const bench = makeBench();
    bench.chartAndStore("a");
    bench.chart("mine");
    bench.chart("later");
    bench.send({ type: "taken", laneId: "lane-1", n: 2 });
    const [fork] = bench.take("fork");
    expect(fork?.entries.map((entry) => entry.id)).toEqual(["mine", "later"]);
    // The other write of the old lane still reports; it belongs to the past.
    bench.send({ type: "taken", laneId: "lane-1", n: 3 });
    bench.send({ type: "forkStored", laneId: "lane-2", count: 2, safe: true });
    expect(bench.state().entries.map(({ n, id }) => [n, id])).toEqual([
      [1, "mine"],
      [2, "later"],
    ]);
    expect(bench.take("fork")).toEqual([]);
  });

  it("[SY7] opens again and refills a log that was restored", () => {
    const bench = makeBench();
    bench.chartAndStore("a", "b", "c");
    bench.goOnline();
    bench.answerAppend(appended(3));
    bench.chartAndStore("d");
    bench.answerAppend({ ok: false, code: "other_incarnation", incarnation: "inc-2" });
    bench.send({ type: "retryDue" });
    bench.answerOpen(opened(1, "inc-2"));
    const sent = bench.take("sendAppend");
    expect(sentNumbers(sent)).toEqual([[2, 3, 4]]);
    expect(sent[0]?.message.incarnation).toBe("inc-2");
  });

  it("[SY8] keeps and shows what the server will never take, and goes on after it", () => {
    const bench = makeBench();
    bench.chartAndStore("a", "b");
    bench.goOnline();
    bench.chartAndStore("c");
    bench.answerAppend(appended(2, [{ n: 1, code: "bad_shape" }]));
    expect(laneStatus(bench.state()).rejected).toMatchObject([{ n: 1, entry: { id: "a" } }]);
    expect(bench.state().entries).toHaveLength(3);
    expect(sentNumbers(bench.take("sendAppend"))).toEqual([[3]]);
  });

  it("[SY15] lets late answers to older requests change nothing", () => {
    const bench = makeBench();
    bench.chartAndStore("a");
    bench.goOnline();
    const [lost] = bench.take("sendAppend");
    bench.send({ type: "linkDown" });
    bench.goOnline();
    bench.send({ type: "appendAnswered", request: lost?.request ?? 0, reply: refusal("forbidden") });
    expect(laneStatus(bench.state()).signal).toBe("open");
    expect(sentNumbers(bench.take("sendAppend"))).toEqual([[1]]);
  });
});

describe("a lane that is refused", () => {
  it.each([
    "signed_out",
    "code_expired",
    "forbidden",
    "lead_taken",
    "new_version",
    "unknown_match",
    "sealed",
  ] as const)("[SY9] stops at %s, keeps everything and starts again when asked", (code) => {
    const bench = makeBench();
    bench.chartAndStore("a");
    bench.goOnline();
    bench.answerAppend(refusal(code));
    expect(laneStatus(bench.state())).toMatchObject({ signal: "refused", refusal: code, unsent: 1 });
    bench.chartAndStore("b");
    expect([...bench.take("sendAppend"), ...bench.take("sendOpen")]).toEqual([]);
    bench.send({ type: "tryAgain" });
    bench.answerOpen(opened(0));
    expect(sentNumbers(bench.take("sendAppend"))).toEqual([[1, 2]]);
  });

  it("[SY9] asks again over a new connection after an expired code, not after a taken lead", () => {
    for (const [code, opens] of [
      ["code_expired", 1],
      ["lead_taken", 0],
    ] as const) {
      const bench = makeBench();
      bench.send({ type: "linkUp" });
      bench.answerOpen(refusal(code));
      bench.send({ type: "linkDown" });
      bench.send({ type: "linkUp" });
      expect(bench.take("sendOpen")).toHaveLength(opens);
    }
  });

  it("[SY3] waits longer after each failure and at least as long as the server asks", () => {
    const bench = makeBench();
    bench.chartAndStore("a");
    bench.goOnline();
    const waits: number[] = [];
    for (let i = 0; i < 7; i += 1) {
      bench.answerAppend(refusal("unavailable", true));
      waits.push(...bench.take("retryIn").map((a) => a.ms));
      bench.send({ type: "retryDue" });
    }
    expect(waits).toEqual([500, 1_000, 2_000, 4_000, 8_000, 15_000, 15_000]);
    expect(laneStatus(bench.state())).toMatchObject({ signal: "noSignal", unsent: 1 });
    bench.answerAppend({ ...refusal("busy", true), afterMs: 20_000 });
    expect(bench.take("retryIn")).toEqual([{ type: "retryIn", ms: 20_000 }]);
  });

  it("[SY9] sends less at a time when a message was too large, down to one entry", () => {
    const bench = makeBench();
    bench.chartAndStore(...Array.from({ length: 60 }, (_, i) => `e${i}`));
    bench.goOnline();
    const sizes: (number | undefined)[] = [];
    for (let i = 0; i < 4; i += 1) {
      const [sent] = bench.take("sendAppend");
      sizes.push(sent?.message.entries.length);
      bench.send({ type: "appendAnswered", request: sent?.request ?? 0, reply: refusal("too_large") });
      bench.send({ type: "retryDue" });
    }
    expect(sizes).toEqual([50, 12, 3, 1]);
    expect(laneStatus(bench.state())).toMatchObject({ signal: "refused", unsent: 60 });
  });
});

describe("a lane that is heard", () => {
  it("[SY10] beats every 3 s with its unsent count while it is open", () => {
    const bench = makeBench();
    bench.goOnline();
    expect(bench.take("beatIn")).toEqual([{ type: "beatIn", ms: 3_000 }]);
    bench.chartAndStore("a");
    bench.send({ type: "beatDue" });
    expect(bench.take("sendBeat")).toMatchObject([{ message: { unsent: 1, wallMs: 5_000 } }]);
    expect(bench.take("beatIn")).toHaveLength(1);
    bench.send({ type: "linkDown" });
    bench.send({ type: "beatDue" });
    expect(bench.take("sendBeat")).toEqual([]);
  });

  it("[SY10] opens again when a beat is not known any more", () => {
    const bench = makeBench();
    bench.goOnline();
    bench.send({ type: "beatAnswered", laneId: "lane-1", reply: refusal("code_expired") });
    bench.answerOpen(refusal("code_expired"));
    expect(laneStatus(bench.state())).toMatchObject({ signal: "refused", refusal: "code_expired" });
  });

  it("[SY12] remembers when the match was sealed, once", () => {
    const bench = makeBench();
    bench.send({ type: "sealed", wallMs: 77 });
    bench.send({ type: "sealed", wallMs: 99 });
    expect(bench.take("saveLane").map((a) => a.record.sealedWallMs)).toEqual([77]);
  });
});
