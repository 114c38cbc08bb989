import type { BoardSnapshot, Heard, Tile } from "@courtloom/protocol";
import { DOWN } from "@courtloom/protocol/names";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createBench } from "./mirror-bench.ts";
import { createBoardMirror } from "./mirror-board.ts";

const DAY = "day-1";

const tileOf = (courtNo: number, pos: number, more: Partial<Tile> = {}): Tile => ({
  courtId: `court-${courtNo}`,
  courtNo,
  courtName: `Court ${courtNo}`,
  state: "playing",
  matchId: `match-${courtNo}`,
  pos,
  names: { A: "Noor V.", B: "Elsbeth K." },
  own: { A: true, B: false },
  score: null,
  next: null,
  heard: null,
  ...more,
});

const heardAt = (matchId: string, heardMs: number | null, unsent = 0): Heard => ({
  matchId,
  heardMs,
  unsent,
});

/** A server with the true tiles, whose clock is `serverMs`. */
const createServer = (...tiles: Tile[]) => {
  const server = {
    tiles,
    serverMs: 1_750_000_000_000,
    answer: (): BoardSnapshot => ({
      ok: true,
      dayId: DAY,
      dayName: "Saturday match play",
      academyName: "Curlew Reach",
      timeZone: "Europe/London",
      serverMs: server.serverMs,
      tiles: server.tiles,
    }),
    tile: (tile: Tile, laterMs = 1) => {
      server.serverMs += laterMs;
      server.tiles = [...server.tiles.filter((t) => t.courtId !== tile.courtId), tile];
      return { dayId: DAY, serverMs: server.serverMs, tile };
    },
  };
  return server;
};

const start = async (server: ReturnType<typeof createServer>) => {
  const bench = createBench(server.answer);
  const mirror = createBoardMirror(bench.channel, DAY, "staff", bench.deps);
  await bench.settle();
  const court = (no: number) => mirror.get().board.courts.get(`court-${no}`);
  return { bench, mirror, court };
};

describe("board mirror", () => {
  it("[MR9] takes the snapshot, courts in the order of their numbers", async () => {
    const { mirror } = await start(createServer(tileOf(2, 5), tileOf(1, 9)));
    expect(mirror.get()).toMatchObject({ state: "live", reachable: true });
    expect(mirror.get().board.order).toEqual(["court-1", "court-2"]);
    expect(mirror.get().board.day?.academyName).toBe("Curlew Reach");
  });

  it("[MR10] never lets an older tile replace a newer", async () => {
    const server = createServer(tileOf(1, 9));
    const { bench, court } = await start(server);
    const late = server.tile(tileOf(1, 10));
    bench.push(DOWN.boardTile, server.tile(tileOf(1, 11)));
    bench.push(DOWN.boardTile, late);
    expect(court(1)?.tile.pos).toBe(11);
  });

  it("[MR10] goes back with a restored log while it is subscribed", async () => {
    const server = createServer(tileOf(1, 9));
    const { bench, court } = await start(server);
    bench.push(DOWN.boardTile, server.tile(tileOf(1, 4)));
    expect(court(1)?.tile.pos).toBe(4);
  });

  it("[MR10] lets the next match replace the last though its pos is lower, and not the other way about", async () => {
    const server = createServer(tileOf(1, 90));
    const { bench, court } = await start(server);
    bench.push(DOWN.boardTile, server.tile(tileOf(1, 1, { matchId: "match-9" })));
    expect(court(1)?.tile.matchId).toBe("match-9");
    bench.push(DOWN.boardTile, { dayId: DAY, serverMs: server.serverMs - 1, tile: tileOf(1, 91) });
    expect(court(1)?.tile.matchId).toBe("match-9");
  });

  it("[MR10] believes a new subscription even when the log went back, as after a restore", async () => {
    const server = createServer(tileOf(1, 90));
    const { bench, court } = await start(server);
    bench.become("lost");
    server.tile(tileOf(1, 40));
    bench.become("open");
    await bench.settle();
    expect(court(1)?.tile.pos).toBe(40);
  });

  it("[MR11] changes the identity of the court that changed and of no other", async () => {
    const server = createServer(tileOf(1, 5), tileOf(2, 5));
    const { bench, court, mirror } = await start(server);
    const [one, two, order] = [court(1), court(2), mirror.get().board.order];
    bench.push(DOWN.boardTile, server.tile(tileOf(1, 6)));
    bench.push(DOWN.boardHeard, {
      dayId: DAY,
      serverMs: server.serverMs,
      heard: [heardAt("match-1", 7), heardAt("gone", 9)],
    });
    expect(court(1)).not.toBe(one);
    expect(court(1)?.heard?.heardMs).toBe(7);
    expect(court(2)).toBe(two);
    expect(mirror.get().board.order).toBe(order);
  });

  it("[MR40] tells who follows one court of that court alone", async () => {
    const server = createServer(tileOf(1, 5), tileOf(2, 5));
    const { bench, mirror } = await start(server);
    const told: string[] = [];
    const stops = ["court-1", "court-2"].map((id) => mirror.subscribeCourt(id, () => void told.push(id)));
    bench.push(DOWN.boardTile, server.tile(tileOf(1, 6)));
    const heard = [heardAt("match-2", 9)];
    bench.push(DOWN.boardHeard, { dayId: DAY, serverMs: server.serverMs, heard });
    bench.push(DOWN.boardHeard, { dayId: DAY, serverMs: server.serverMs, heard });
    expect(told).toEqual(["court-1", "court-2"]);
    for (const stop of stops) stop();
    bench.push(DOWN.boardTile, server.tile(tileOf(1, 7)));
    expect(told).toHaveLength(2);
  });

  it("[MR11] keeps the newest word of a phone, whichever message brought it", async () => {
    const server = createServer(tileOf(1, 5, { heard: heardAt("match-1", 100, 3) }));
    const { bench, court } = await start(server);
    const heard = (h: Heard) =>
      bench.push(DOWN.boardHeard, { dayId: DAY, serverMs: server.serverMs, heard: [h] });
    heard(heardAt("match-1", 50));
    expect(court(1)?.heard).toEqual(heardAt("match-1", 100, 3));
    heard(heardAt("match-1", 200, 1));
    bench.push(DOWN.boardTile, server.tile(tileOf(1, 6, { heard: heardAt("match-1", 150) })));
    expect(court(1)?.heard).toEqual(heardAt("match-1", 200, 1));
    bench.push(DOWN.boardTile, server.tile(tileOf(1, 1, { matchId: "match-9" })));
    expect(court(1)?.heard).toBeNull();
  });

  it("[MR12] tells the server's time by the least delayed message", async () => {
    const server = createServer(tileOf(1, 5));
    const { bench, mirror } = await start(server);
    expect(mirror.serverNowMs()).toBe(server.serverMs);
    await bench.pass(3_000);
    bench.push(DOWN.boardHeard, { dayId: DAY, serverMs: server.serverMs + 2_400, heard: [] });
    expect(mirror.serverNowMs()).toBe(server.serverMs + 3_000);
    bench.push(DOWN.boardHeard, { dayId: DAY, serverMs: server.serverMs + 3_050, heard: [] });
    expect(mirror.serverNowMs()).toBe(server.serverMs + 3_050);
  });

  it("[MR9] passes over another day's messages", async () => {
    const { bench, court } = await start(createServer(tileOf(1, 5)));
    bench.push(DOWN.boardTile, { dayId: "day-2", serverMs: 1, tile: tileOf(1, 50) });
    expect(court(1)?.tile.pos).toBe(5);
  });

  it("[MR9] drops a court that the day no longer has", async () => {
    const server = createServer(tileOf(1, 5), tileOf(2, 5));
    const { bench, mirror } = await start(server);
    server.tiles = [tileOf(1, 5)];
    bench.become("lost");
    expect(mirror.get().state).toBe("stale");
    bench.become("open");
    await bench.settle();
    expect(mirror.get().board.order).toEqual(["court-1"]);
  });

  it("[MR10] ends with the newest tile of each court after any drops, repeats and disorder", async () => {
    const happening = fc.record({
      court: fc.integer({ min: 1, max: 3 }),
      how: fc.constantFrom("push", "drop", "twice", "late", "cut"),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(happening, { maxLength: 50 }), async (happenings) => {
        const server = createServer(tileOf(1, 1), tileOf(2, 1), tileOf(3, 1));
        const { bench, mirror } = await start(server);
        let held: unknown;
        for (const [i, { court, how }] of happenings.entries()) {
          const message = server.tile(tileOf(court, i + 2));
          if (how === "cut") bench.become("lost");
          if (how === "cut") bench.become("open");
          if (how === "late") held = message;
          if (how === "push" || how === "twice") bench.push(DOWN.boardTile, message);
          if (how === "twice") bench.push(DOWN.boardTile, message);
          if (how !== "late" && held) bench.push(DOWN.boardTile, held);
          await bench.settle();
        }
        bench.become("lost");
        bench.become("open");
        await bench.settle();
        for (const tile of server.tiles) {
          expect(mirror.get().board.courts.get(tile.courtId)?.tile).toEqual(tile);
        }
        mirror.close();
      }),
      { seed: 20260704, numRuns: 150 },
    );
  });
});
