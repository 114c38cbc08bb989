import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import { openedWith } from "@courtloom/match-log/testing";
import type { CourtWatch, CourtWatchReply } from "@courtloom/protocol";
import { DOWN, UP } from "@courtloom/protocol/names";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Bench, createBench } from "./mirror-bench.ts";
import { createCourtMirror } from "./mirror-court.ts";

const MATCH = "match-1";

const opening: LoggedEntry = {
  pos: 1,
  laneId: "desk",
  epoch: 0,
  entry: {
    v: 1,
    id: "00000000-0000-4000-8000-000000000001",
    n: 1,
    atMs: 0,
    wallMs: 0,
    body: openedWith({ matchId: MATCH }),
  },
};

const uuid = (pos: number) => `00000000-0000-4000-8000-${String(pos).padStart(12, "0")}`;

/** Points won by one side or the other, and every seventh entry takes an earlier one back. */
const entryAt = (pos: number): LoggedEntry => ({
  pos,
  laneId: "lane-1",
  epoch: 1,
  entry: {
    v: 1,
    id: uuid(pos),
    n: pos - 1,
    atMs: pos * 1000,
    wallMs: pos * 1000,
    body:
      pos % 7 === 0
        ? { kind: "EntryVoided", target: uuid(pos - 3) }
        : {
            kind: "PointCharted",
            point: {
              winner: pos % 3 === 0 ? "B" : "A",
              level: "score",
              seat: "behind",
              endOfA: "near",
              shots: [],
            },
          },
  },
});

/** The true log, and a server that reads it out in pages of `pageSize`. */
const createServer = (size: number, pageSize = 500) => {
  const server = {
    incarnation: "first",
    log: [opening, ...Array.from({ length: size - 1 }, (_, i) => entryAt(i + 2))],
    answer: (event: string, message: never): CourtWatchReply | { ok: true } => {
      if (event === UP.courtLeave) return { ok: true };
      const { after } = message as CourtWatch;
      const entries = server.log.slice(after, after + pageSize);
      const head = server.log.length;
      const more = after + entries.length < head;
      return { ok: true, incarnation: server.incarnation, head, entries, more };
    },
    grow: () => {
      const next = entryAt(server.log.length + 1);
      server.log.push(next);
      return next;
    },
  };
  return server;
};

const message = (incarnation: string, ...entries: LoggedEntry[]) => ({
  matchId: MATCH,
  incarnation,
  entries,
});

const expectEqualToFold = (mirror: ReturnType<typeof createCourtMirror>, log: readonly LoggedEntry[]) => {
  const folded = foldLog(log);
  expect(mirror.get().entries).toEqual(log);
  expect(folded.ok && mirror.get().view).toEqual(folded.ok && folded.value);
};

describe("court mirror", () => {
  it("[MR5] subscribes once, reads the backlog page by page, then applies what is pushed", async () => {
    const server = createServer(12, 5);
    const bench = createBench(server.answer);
    const mirror = createCourtMirror(bench.channel, MATCH, bench.deps);
    expect(mirror.get().state).toBe("loading");
    await bench.settle();
    expect(bench.asked.map((q) => q.event)).toEqual([UP.courtWatch, UP.courtRead, UP.courtRead]);
    bench.push(DOWN.courtEntries, message("first", server.grow()));
    expect(mirror.get().state).toBe("live");
    expectEqualToFold(mirror, server.log);
  });

  it("[MR6] drops what it has and reads what it missed", async () => {
    const server = createServer(5);
    const bench = createBench(server.answer);
    const mirror = createCourtMirror(bench.channel, MATCH, bench.deps);
    await bench.settle();
    bench.push(DOWN.courtEntries, message("first", entryAt(4), entryAt(5)));
    expect(bench.asked).toHaveLength(1);
    server.grow();
    bench.push(DOWN.courtEntries, message("first", server.grow()));
    expect(mirror.get().entries).toHaveLength(5);
    await bench.settle();
    expectEqualToFold(mirror, server.log);
  });

  it("[MR7] drops everything on another incarnation and reads it from the start", async () => {
    const server = createServer(9);
    const bench = createBench(server.answer);
    const mirror = createCourtMirror(bench.channel, MATCH, bench.deps);
    await bench.settle();
    server.incarnation = "second";
    server.log = server.log.slice(0, 4);
    bench.push(DOWN.courtEntries, message("second", server.grow()));
    expect(mirror.get().entries).toEqual([]);
    await bench.settle();
    expectEqualToFold(mirror, server.log);
  });

  it("[MR7] finds another incarnation after a reconnect though it heard nothing of it", async () => {
    const server = createServer(9);
    const bench = createBench(server.answer);
    const mirror = createCourtMirror(bench.channel, MATCH, bench.deps);
    await bench.settle();
    bench.become("lost");
    expect(mirror.get().state).toBe("stale");
    server.incarnation = "second";
    server.log = server.log.slice(0, 6);
    bench.become("open");
    await bench.settle();
    expect(mirror.get().state).toBe("live");
    expectEqualToFold(mirror, server.log);
  });

  it("[MR3] says refused and why, and tries again after a reconnect", async () => {
    const server = createServer(3);
    let refuse = true;
    const bench = createBench((event, msg) =>
      refuse ? { ok: false, code: "forbidden", retry: false } : server.answer(event, msg),
    );
    const mirror = createCourtMirror(bench.channel, MATCH, bench.deps);
    await bench.settle();
    expect(mirror.get()).toMatchObject({ state: "refused", refusal: "forbidden" });
    await bench.pass(30_000);
    expect(bench.asked).toHaveLength(1);
    refuse = false;
    bench.become("lost");
    bench.become("open");
    await bench.settle();
    expect(mirror.get()).toMatchObject({ state: "live", refusal: null });
  });

  it("[MR4] retries a refusal that may be retried", async () => {
    const server = createServer(3);
    let busy = true;
    const bench = createBench((event, msg) =>
      busy ? { ok: false, code: "busy", retry: true, afterMs: 3_000 } : server.answer(event, msg),
    );
    const mirror = createCourtMirror(bench.channel, MATCH, bench.deps);
    await bench.settle();
    expect(mirror.get().state).toBe("loading");
    busy = false;
    await bench.pass(2_000);
    expect(mirror.get().state).toBe("loading");
    await bench.pass(1_000);
    expect(mirror.get().state).toBe("live");
  });

  it("[MR8] ends equal to the fold after any drops, repeats, disorder and cut connections", async () => {
    const step = fc.constantFrom("push", "drop", "twice", "late", "cut", "join");
    await fc.assert(
      fc.asyncProperty(
        fc.array(step, { maxLength: 60 }),
        fc.integer({ min: 1, max: 7 }),
        async (steps, page) => {
          const server = createServer(3, page);
          const bench = createBench(server.answer);
          const mirror = createCourtMirror(bench.channel, MATCH, bench.deps);
          for (const what of steps) await play(bench, server, what);
          bench.become("lost");
          bench.become("open");
          await bench.settle();
          await bench.settle();
          expectEqualToFold(mirror, server.log);
          mirror.close();
        },
      ),
      { seed: 20260704, numRuns: 150 },
    );
  });

  it("[MR8] closes: listens no more and tells the server", async () => {
    const server = createServer(3);
    const bench = createBench(server.answer);
    const mirror = createCourtMirror(bench.channel, MATCH, bench.deps);
    await bench.settle();
    mirror.close();
    bench.push(DOWN.courtEntries, message("first", server.grow()));
    expect(mirror.get().entries).toHaveLength(3);
    expect(bench.asked.at(-1)?.event).toBe(UP.courtLeave);
  });
});

/** One thing that happens between the server and a mirror. */
const play = async (bench: Bench, server: ReturnType<typeof createServer>, what: string) => {
  const push = (...entries: LoggedEntry[]) =>
    bench.push(DOWN.courtEntries, message(server.incarnation, ...entries));
  if (what === "cut") return bench.become("lost");
  if (what === "join") {
    bench.become("open");
    return bench.settle();
  }
  const entry = server.grow();
  if (what === "push" || what === "twice") push(entry);
  if (what === "twice") push(entry);
  if (what === "late") {
    const later = server.grow();
    push(later);
    push(entry);
  }
};
