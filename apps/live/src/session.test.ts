import { PROTOCOL_VERSION, REFUSALS } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { createWorld } from "./testing/create-node.ts";

const READ = { matchId: "m1", after: 0 };

describe("the gateway", () => {
  it("[PR1] judges name, version, shape, then authority", async () => {
    const { connect } = createWorld().addNode();
    const nobody = connect("nobody");
    const coach = connect("coach");
    for (const name of ["nonsense", "constructor", "__proto__", "disconnect", ""]) {
      expect(await nobody.ask(name, READ)).toEqual({ ok: false, code: "bad_shape", retry: false });
    }
    expect(await nobody.ask("court.read", { ...READ, v: PROTOCOL_VERSION + 1, more: 1 })).toMatchObject({
      code: "new_version",
    });
    expect(await nobody.ask("court.read", { ...READ, v: 0 })).toMatchObject({ code: "old_version" });
    expect(await nobody.ask("court.read", { ...READ, v: "1" })).toMatchObject({ code: "bad_shape" });
    expect(await nobody.ask("court.read", { ...READ, more: 1 })).toMatchObject({ code: "bad_shape" });
    expect(await nobody.ask("court.read", READ)).toEqual({ ok: false, code: "signed_out", retry: false });
    expect(await coach.ask("court.read", READ)).toMatchObject({ ok: true, head: 0, entries: [] });
  });

  it("[LV21] puts off what is above twenty messages a second after a burst of two hundred", async () => {
    const world = createWorld();
    const coach = world.addNode().connect("coach");
    const codes: unknown[] = [];
    for (let i = 0; i < 210; i += 1) codes.push((await coach.ask("court.read", READ)).code);
    expect(codes.filter((code) => code === "busy")).toHaveLength(10);
    expect(await coach.ask("court.read", READ)).toEqual({
      ok: false,
      code: "busy",
      retry: true,
      afterMs: 50,
    });
    await world.time.advance(1_000);
    codes.length = 0;
    for (let i = 0; i < 30; i += 1) codes.push((await coach.ask("court.read", READ)).code);
    expect(codes.filter((code) => code === undefined)).toHaveLength(20);
  });

  it("[LV22] cuts off within two seconds whoever is revoked, and says why when they come back", async () => {
    const world = createWorld();
    const { connect } = world.addNode();
    const wall = connect("wall");
    const idle = connect("helper");
    await wall.ask("board.watch", { dayId: "d1", view: "wall" });
    await world.time.advance(5_000);
    expect(wall.isEnded()).toBe(false);
    world.sessions.revoke("wall", "code_expired");
    world.sessions.revoke("helper", "code_expired");
    await world.time.advance(2_000);
    expect(wall.isEnded()).toBe(true);
    expect(await idle.ask("lane.beat", { matchId: "m1", laneId: "l", unsent: 0, wallMs: 0 })).toEqual({
      ok: false,
      code: "code_expired",
      retry: false,
    });
    expect(REFUSALS).toContain("code_expired");
  });

  it("[LV23] answers `unavailable` while the database is away, and goes on when it is back", async () => {
    const world = createWorld();
    const { connect, faults } = world.addNode();
    const coach = connect("coach");
    world.day.away = true;
    expect(await coach.ask("court.read", READ)).toEqual({ ok: false, code: "unavailable", retry: true });
    expect(await coach.ask("board.watch", { dayId: "d1", view: "staff" })).toMatchObject({
      code: "unavailable",
    });
    await world.time.advance(3_000);
    world.day.away = false;
    expect(await coach.ask("board.watch", { dayId: "d1", view: "staff" })).toMatchObject({ ok: true });
    expect(await coach.ask("court.read", READ)).toMatchObject({ ok: true });
    expect(faults).toEqual([]);
  });

  it("[LV24] follows nothing for a connection that is closed", async () => {
    const world = createWorld();
    const node = world.addNode();
    const coach = node.connect("coach");
    await coach.ask("board.watch", { dayId: "d1", view: "staff" });
    coach.close();
    await coach.ask("court.watch", { matchId: "m1", after: 0, screen: "court" });
    expect(node.live.directory.boardRooms().every((board) => board.isQuiet())).toBe(true);
    expect(node.live.directory.matchRooms().every((room) => room.isQuiet())).toBe(true);
  });

  it("[LV24] gives up a room that nobody uses, and reads it anew when somebody does", async () => {
    const world = createWorld();
    const { connect, live } = world.addNode();
    const phone = connect("helper");
    await phone.ask("lane.open", { matchId: "m1", laneId: "lane-1", level: "key" });
    await phone.ask("court.watch", { matchId: "m1", after: 0 });
    await world.time.advance(200_000);
    expect(live.directory.matchRooms()).toHaveLength(1);
    await phone.ask("court.leave", { id: "m1" });
    await world.time.advance(200_000);
    expect(live.directory.matchRooms()).toEqual([]);
    expect(await phone.ask("court.read", { matchId: "m1", after: 0 })).toMatchObject({ head: 1 });
  });
});
