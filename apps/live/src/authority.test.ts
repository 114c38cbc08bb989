import { UP } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { createWorld } from "./testing/create-node.ts";
import { pointEntries } from "./testing/entries.ts";
import { PEOPLE, type Person } from "./testing/principals.ts";

/** m1: helper's court and day. m2: another court. m4: another day. m9: another academy. m0: nobody's. */
const MATCH_IDS = ["m1", "m2", "m4", "m9", "m0"] as const;
const DAY_IDS = ["d1", "d2", "d9", "d0"] as const;
const NONE = "signed_out";
const mine = (own: readonly string[], all: readonly string[], otherwise: string) =>
  Object.fromEntries(all.map((id) => [id, own.includes(id) ? "ok" : otherwise]));

/** What each message answers to each person for each id. Written out here, apart from the table it tests. */
const MATCH_ANSWERS: Readonly<Record<Person | "nobody", Readonly<Record<string, string>>>> = {
  director: mine(["m1", "m2", "m4"], MATCH_IDS, "unknown_match"),
  coach: mine(["m1", "m2", "m4"], MATCH_IDS, "unknown_match"),
  stranger: mine(["m9"], MATCH_IDS, "unknown_match"),
  helper: mine(["m1"], MATCH_IDS, "unknown_match"),
  otherHelper: mine(["m2"], MATCH_IDS, "unknown_match"),
  relief: mine(["m1"], MATCH_IDS, "unknown_match"),
  wall: mine([], MATCH_IDS, "forbidden"),
  nobody: mine([], MATCH_IDS, NONE),
};
const STAFF_BOARDS: typeof MATCH_ANSWERS = {
  director: mine(["d1", "d2"], DAY_IDS, "unknown_day"),
  coach: mine(["d1", "d2"], DAY_IDS, "unknown_day"),
  stranger: mine(["d9"], DAY_IDS, "unknown_day"),
  helper: mine([], DAY_IDS, "forbidden"),
  otherHelper: mine([], DAY_IDS, "forbidden"),
  relief: mine([], DAY_IDS, "forbidden"),
  wall: mine([], DAY_IDS, "forbidden"),
  nobody: mine([], DAY_IDS, NONE),
};
const WALL_BOARDS: typeof MATCH_ANSWERS = { ...STAFF_BOARDS, wall: mine(["d1"], DAY_IDS, "unknown_day") };

const everybody = [...Object.keys(PEOPLE), "nobody"] as (Person | "nobody")[];
const codeOf = (reply: Record<string, unknown>): string => (reply.ok === true ? "ok" : String(reply.code));

const messages = (laneId: string) => [
  { event: UP.laneOpen, payload: (matchId: string) => ({ matchId, laneId, level: "key" }) },
  { event: UP.courtWatch, payload: (matchId: string) => ({ matchId, after: 0 }) },
  { event: UP.courtRead, payload: (matchId: string) => ({ matchId, after: 0 }) },
  { event: UP.laneBeat, payload: (matchId: string) => ({ matchId, laneId, unsent: 0, wallMs: 1 }) },
  {
    event: UP.laneAppend,
    payload: (matchId: string) => ({
      matchId,
      laneId,
      incarnation: "log-1",
      entries: pointEntries(everybody.length, 1, 1),
    }),
  },
];

describe("who may send what", () => {
  const cells = everybody.flatMap((person) => MATCH_IDS.map((matchId) => ({ person, matchId })));

  it.each(cells)("[LV15] $person about match $matchId", async ({ person, matchId }) => {
    const world = createWorld();
    const peer = world.addNode().connect(person);
    for (const { event, payload } of messages(`lane-${person}`)) {
      const reply = await peer.ask(event, payload(matchId));
      expect({ event, answer: codeOf(reply) }).toEqual({ event, answer: MATCH_ANSWERS[person][matchId] });
    }
  });

  it.each(everybody)("[LV15, AL25] %s about days", async (person) => {
    const peer = createWorld().addNode().connect(person);
    for (const dayId of DAY_IDS) {
      const staff = await peer.ask(UP.boardWatch, { dayId, view: "staff" });
      const wall = await peer.ask(UP.boardWatch, { dayId, view: "wall" });
      expect([dayId, codeOf(await peer.ask(UP.alertsWatch, { dayId }))]).toEqual([
        dayId,
        STAFF_BOARDS[person][dayId],
      ]);
      expect([dayId, codeOf(staff), codeOf(wall)]).toEqual([
        dayId,
        STAFF_BOARDS[person][dayId],
        WALL_BOARDS[person][dayId],
      ]);
    }
  });

  it.each(everybody)("[LV15] %s may always leave", async (person) => {
    const peer = createWorld().addNode().connect(person);
    for (const event of [UP.courtLeave, UP.boardLeave, UP.alertsLeave]) {
      expect(codeOf(await peer.ask(event, { id: "m9" }))).toBe(person === "nobody" ? NONE : "ok");
    }
  });

  it("[LV15] a foreign match answers exactly as one that does not exist", async () => {
    const world = createWorld();
    const node = world.addNode();
    await node.connect("stranger").ask(UP.laneOpen, { matchId: "m9", laneId: "lane-9", level: "key" });
    const peer = node.connect("director");
    for (const { event, payload } of messages("lane-9")) {
      expect(await peer.ask(event, payload("m9"))).toEqual(await peer.ask(event, payload("m0")));
    }
  });

  it("[LV16] a helper's phone receives no usual rate, plan, fit or watch, by any message", async () => {
    const world = createWorld();
    const node = world.addNode();
    const helper = node.connect("helper");
    const first = await helper.ask(UP.courtWatch, { matchId: "m1", after: 0 });
    const lane = await helper.ask(UP.laneOpen, { matchId: "m1", laneId: "lane-1", level: "key" });
    const read = await helper.ask(UP.courtRead, { matchId: "m1", after: 0 });
    const entries = pointEntries(1, 1, 3);
    await helper.ask(UP.laneAppend, { matchId: "m1", laneId: "lane-1", incarnation: "log-1", entries });
    await world.time.settle();
    const court = { matchId: "m1", after: 0, screen: "court" };
    const coach = await node.connect("coach").ask(UP.courtRead, court);
    expect(JSON.stringify(coach)).toMatch(/usualRates.*plan-1.*fit-1/);
    expect(await helper.ask(UP.courtRead, court)).toMatchObject({ ok: false, code: "forbidden" });
    expect(helper.told).toHaveLength(2);
    const received = JSON.stringify([first, lane, read, helper.told]);
    expect(received).toContain("PointCharted");
    expect(received).not.toMatch(/usualRates|mean|plan-1|fit-1/);
  });

  it("[LV17] a new session of the same court goes on in the old one's lane; a member's lane is theirs alone", async () => {
    const world = createWorld();
    const node = world.addNode();
    const entries = pointEntries(1, 1, 1);
    await node.connect("coach").ask(UP.laneOpen, { matchId: "m1", laneId: "lane-1", level: "key" });
    const asDirector = node.connect("director");
    const append = { matchId: "m1", laneId: "lane-1", incarnation: "log-1", entries };
    expect(await asDirector.ask(UP.laneAppend, append)).toMatchObject({ code: "unknown_lane" });
    expect(
      await asDirector.ask(UP.laneOpen, { matchId: "m1", laneId: "lane-1", level: "key" }),
    ).toMatchObject({
      code: "forbidden",
      retry: false,
    });
    expect(
      await asDirector.ask(UP.laneOpen, { matchId: "m1", laneId: "lane-2", level: "key" }),
    ).toMatchObject({
      code: "lead_taken",
      leader: { by: "Tobias A.", takeOverInMs: 0 },
    });
    expect(await node.connect("coach").ask(UP.laneAppend, append)).toMatchObject({ ok: true });
  });
});
