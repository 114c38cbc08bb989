import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import type { BoardTile, CourtEntries } from "@courtloom/protocol";
import { afterEach, describe, expect, it } from "vitest";
import { pointEntries, pointEntry } from "../testing/entries.ts";
import { type Client, createSocketBench, openLane, type SocketBench } from "../testing/socket-bench.ts";

let bench: SocketBench;
afterEach(() => bench.close());

const seen = ({ told }: Client): LoggedEntry[] =>
  told.filter((t) => t.event === "court.entries").flatMap((t) => (t.message as CourtEntries).entries);
const append = (client: Client, matchId: string, laneId: string, entries: readonly unknown[]) =>
  client.ask("lane.append", { v: 1, matchId, laneId, incarnation: "log-1", entries });

describe("the live server over real sockets", () => {
  it("[LV2] two courts are charted at once, and every viewer equals the fold", async () => {
    bench = await createSocketBench();
    const [one, two, coach] = [
      await bench.connect("helper"),
      await bench.connect("otherHelper"),
      await bench.connect("coach"),
    ];
    await openLane(one, "m1", "lane-1");
    await openLane(two, "m2", "lane-2");
    await coach.ask("board.watch", { v: 1, dayId: "d1", view: "staff" });
    const pages = new Map<string, LoggedEntry[]>();
    for (const matchId of ["m1", "m2"]) {
      const page = await coach.ask("court.watch", { v: 1, matchId, after: 0, screen: "court" });
      pages.set(matchId, page.entries as LoggedEntry[]);
    }
    for (let i = 0; i < 20; i += 1) {
      const from = i * 3 + 1;
      await Promise.all([
        append(one, "m1", "lane-1", pointEntries(1, from, from + 2)),
        append(two, "m2", "lane-2", pointEntries(2, from, from + 2)),
      ]);
    }
    await coach.until((told) => {
      const tiles = told.filter((t) => t.event === "board.tile").map((t) => (t.message as BoardTile).tile);
      return ["m1", "m2"].every((id) => tiles.some((tile) => tile.matchId === id && tile.pos === 61));
    });
    for (const matchId of ["m1", "m2"]) {
      const log = await bench.store.read({ academyId: "curlew", matchId, after: 0, limit: 100 });
      const pushed = coach.told
        .filter((t) => t.event === "court.entries" && (t.message as CourtEntries).matchId === matchId)
        .flatMap((t) => (t.message as CourtEntries).entries);
      const page = await coach.ask("court.read", { v: 1, matchId, after: pages.get(matchId)?.length ?? 0 });
      const missing = (page.entries as LoggedEntry[]).filter((e) => !pushed.some((p) => p.pos === e.pos));
      const all = [...(pages.get(matchId) ?? []), ...pushed, ...missing].sort((a, b) => a.pos - b.pos);
      expect(all).toEqual(log.ok && log.value.entries);
      const folded = foldLog(all);
      const room = bench.live.directory.findMatch({ academyId: "curlew", matchId });
      expect(folded.ok && JSON.stringify(folded.value)).toBe(JSON.stringify(room?.view()));
    }
    expect(bench.faults).toEqual([]);
  });

  it("[LV4] answers duplicate, gap, another entry and another log on the wire", async () => {
    bench = await createSocketBench();
    const phone = await bench.connect("helper");
    await openLane(phone, "m1", "lane-1");
    expect(await append(phone, "m1", "lane-1", pointEntries(1, 1, 5))).toMatchObject({
      kind: "appended",
      upTo: 5,
    });
    expect(await append(phone, "m1", "lane-1", pointEntries(1, 1, 5))).toMatchObject({
      kind: "duplicate",
      upTo: 5,
    });
    expect(await append(phone, "m1", "lane-1", pointEntries(1, 7, 8))).toEqual({
      ok: false,
      code: "gap",
      expect: 6,
    });
    expect(await append(phone, "m1", "lane-1", [pointEntry(3, 5)])).toEqual({
      ok: false,
      code: "identity_conflict",
      n: 5,
    });
    const other = {
      v: 1,
      matchId: "m1",
      laneId: "lane-1",
      incarnation: "log-0",
      entries: pointEntries(1, 6, 6),
    };
    expect(await phone.ask("lane.append", other)).toMatchObject({
      code: "other_incarnation",
      incarnation: "log-1",
    });
    const mixed = [pointEntry(1, 6), { n: 7, nonsense: true }, pointEntry(1, 8)];
    expect(await append(phone, "m1", "lane-1", mixed)).toMatchObject({
      ok: true,
      upTo: 8,
      head: 8,
      rejected: [{ n: 7, code: "bad_shape" }],
    });
  });

  it("[LV1] acknowledges only after the commit", async () => {
    const commit = Promise.withResolvers<void>();
    const reached = Promise.withResolvers<void>();
    bench = await createSocketBench({
      append: async (batch) => {
        reached.resolve();
        await commit.promise;
        return bench.store.append(batch);
      },
    });
    const phone = await bench.connect("helper");
    await openLane(phone, "m1", "lane-1");
    let answered = false;
    const reply = append(phone, "m1", "lane-1", pointEntries(1, 1, 1)).then((answer) => {
      answered = true;
      return answer;
    });
    await reached.promise;
    // A whole round trip on the same connection passes while the commit is held.
    await phone.ask("lane.beat", { v: 1, matchId: "m1", laneId: "lane-1", unsent: 1, wallMs: 1 });
    expect(answered).toBe(false);
    commit.resolve();
    expect(await reply).toMatchObject({ ok: true, upTo: 1 });
  });

  it("[LV16] what a helper's phone receives has nothing that it must not hold", async () => {
    bench = await createSocketBench();
    const phone = await bench.connect("helper");
    const frames: string[] = [];
    phone.socket.io.engine.on("packet", (packet: { data?: unknown }) => frames.push(String(packet.data)));
    await phone.ask("court.watch", { v: 1, matchId: "m1", after: 0 });
    await openLane(phone, "m1", "lane-1");
    await append(phone, "m1", "lane-1", pointEntries(1, 1, 4));
    await phone.until(() => seen(phone).length === 5);
    expect(frames.join("")).toContain("MatchOpened");
    expect(frames.join("")).not.toMatch(/usualRates|lineMissed|plan-1|fit-1/);
  });

  it("[LV19] lets in pages of its own host only", async () => {
    bench = await createSocketBench();
    const own = bench.url;
    const knocks = [
      [{ origin: own, cookie: "coach" }, true],
      [{ origin: own }, true],
      [{ cookie: "coach" }, false],
      [{ origin: "http://club.example", cookie: "coach" }, false],
      [{ origin: "http://127.0.0.1:1", cookie: "coach" }, false],
      [{ origin: "null", cookie: "coach" }, false],
      [{ origin: `${own}/`, cookie: "coach" }, false],
      [{ origin: `${own}.club.example`, cookie: "coach" }, false],
    ] as const;
    for (const [headers, admitted] of knocks)
      expect([headers, await bench.knock(headers)]).toEqual([headers, admitted]);
  });

  it("[LV20] limits failed handshakes by address, never those of somebody known", async () => {
    bench = await createSocketBench();
    const from = (address: string, person?: string) => ({
      origin: bench.url,
      "x-forwarded-for": address,
      ...(person ? { cookie: person } : {}),
    });
    let refused = 0;
    for (let i = 0; i < 40; i += 1) if (!(await bench.knock(from("192.0.2.7")))) refused += 1;
    expect(refused).toBeGreaterThanOrEqual(8);
    expect(await bench.knock(from("192.0.2.7", "coach"))).toBe(true);
    expect(await bench.knock(from("192.0.2.8"))).toBe(true);
  });

  it("[LV22] a revoked connection ends, and what comes back is told why", async () => {
    bench = await createSocketBench();
    const wall = await bench.connect("wall");
    await wall.ask("board.watch", { v: 1, dayId: "d1", view: "wall" });
    const ended = new Promise<string>((resolve) => wall.socket.once("disconnect", resolve));
    bench.sessions.revoke("wall", "code_expired");
    expect(await ended).toBe("io server disconnect");
    wall.socket.connect();
    expect(await wall.ask("board.watch", { v: 1, dayId: "d1", view: "wall" })).toMatchObject({
      code: "code_expired",
    });
  });

  it("[LV31] a phone with an account and a court's code speaks as the handshake asks", async () => {
    bench = await createSocketBench();
    const beat = { v: 1, matchId: "m1", laneId: "lane-1", unsent: 0, wallMs: 1 };
    const chartist = async (words: object, laneId: string) => {
      const phone = await bench.connect("coach+helper", words);
      await openLane(phone, "m1", laneId);
      return (await phone.ask("lane.beat", { ...beat, laneId })).ok;
    };
    expect(await chartist({ as: "courtside" }, "lane-1")).toBe(true);
    const helper = await bench.connect("helper");
    // The lane belongs to the court: whoever holds its code goes on with it, an account does not.
    expect(await openLane(helper, "m1", "lane-1")).toMatchObject({ ok: true });
    expect(await openLane(await bench.connect("coach+helper"), "m1", "lane-1")).toMatchObject({ ok: false });
    expect(
      await openLane(await bench.connect("coach+helper", { as: "courtside", more: 1 }), "m1", "lane-1"),
    ).toMatchObject({ ok: false });
    // The other court is not the code's; it is the account's to chart.
    const away = await bench.connect("coach+helper", { as: "courtside" });
    expect(await openLane(away, "m2", "lane-2")).toMatchObject({ ok: false });
    expect(await openLane(await bench.connect("coach+helper"), "m2", "lane-2")).toMatchObject({ ok: true });
  });

  it("[LV31] when the court's code ends, the account goes on, and the other way round", async () => {
    bench = await createSocketBench();
    bench.sessions.revoke("helper", "code_expired");
    const phone = await bench.connect("coach+helper", { as: "courtside" });
    expect(await openLane(phone, "m1", "lane-1")).toMatchObject({ ok: true });
    bench.sessions.revoke("coach", "signed_out");
    const other = await bench.connect("coach+otherHelper");
    expect(await openLane(other, "m2", "lane-2")).toMatchObject({ ok: true });
  });

  it("[LV25] says whether it is well, and which start of the product it belongs to", async () => {
    bench = await createSocketBench();
    const health = async () => (await fetch(`${bench.url}/healthz`)).json();
    expect(await health()).toEqual({ instanceId: "this-start", ok: true });
    bench.day.away = true;
    expect(await health()).toEqual({ instanceId: "this-start", ok: false });
    expect((await fetch(`${bench.url}/else`)).status).toBe(404);
    expect((await fetch(`${bench.url}/healthz`, { method: "POST" })).status).toBe(404);
  });

  it("[LV25] closing lets clients come back by themselves", async () => {
    bench = await createSocketBench();
    const coach = await bench.connect("coach");
    const ended = new Promise<string>((resolve) => coach.socket.once("disconnect", resolve));
    await bench.server.close();
    expect(await ended).toBe("transport close");
    expect(coach.socket.active).toBe(true);
  });
});
