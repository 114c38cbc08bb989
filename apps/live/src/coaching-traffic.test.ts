import { COACHING_MODES, type MatchOpened } from "@courtloom/match-log";
import {
  holdsFigures,
  type LiveRole,
  type LiveScreen,
  mayHold,
  mayHoldAlerts,
  PROTOCOL_VERSION,
  UP,
} from "@courtloom/protocol";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createWorld } from "./testing/create-node.ts";
import { missedLineBalls } from "./testing/entries.ts";
import { type Client, createSocketBench, openLane, type SocketBench } from "./testing/socket-bench.ts";

const USUAL = 0.313131;
const rate = { mean: USUAL, low: 0.1, high: 0.55, a: 6, b: 14, source: "own" } as const;

/** Each canary stands in one place of the opening only, so that finding it says what got through. */
const OPENING: Partial<MatchOpened> = {
  usualRates: { A: { lineMissed: rate }, B: {} },
  planVersion: "canary-plan-version",
  fitVersion: "canary-fit",
  players: {
    A: { playerId: "m1-A", hand: "right", own: true, level: 4177 },
    B: { playerId: "m1-B", hand: "left", own: false, level: 4178 },
  },
  plans: {
    A: {
      planId: "canary-plan",
      version: 1,
      rules: [{ id: "canary-rule", when: {}, aim: "keep", lineOn: [], targets: [] }],
    },
    B: null,
  },
  watches: [
    {
      ...{ side: "A", rate: "lineMissed", version: 1, usual: 0.292929, source: "own", up: 100, down: 1 },
      ...{ horizon: 20, red: { first: 300, late: 300 }, amber: { first: 200, late: 200 }, alpha: 0.05 },
    },
  ],
};

/** What is looked for in everything that was sent. */
const CANARIES = {
  "usual rate": /0\.313131|usualLineMissed/,
  plan: /canary-plan|canary-rule|lineOn/,
  level: /417[78]/,
  fit: /canary-fit/,
  watch: /0\.292929|"horizon"/,
  figure: /"lineMissed":\{"x"/,
  verdict: /"planKept"/,
} as const;

const LOOKERS = ["director", "coach", "helper", "wall"] as const satisfies readonly LiveRole[];

const ask = (client: Client, event: string, payload: object) =>
  client.ask(event, { v: PROTOCOL_VERSION, ...payload });

/** Everything that somebody may ask for as this screen. */
const QUESTIONS: Readonly<Record<LiveScreen, (client: Client, who: string) => readonly Promise<unknown>[]>> =
  {
    publicWall: (client) => [ask(client, UP.boardWatch, { dayId: "d1", view: "wall" })],
    staffBoard: (client) => [
      ask(client, UP.boardWatch, { dayId: "d1", view: "staff" }),
      ask(client, UP.alertsWatch, { dayId: "d1" }),
    ],
    phone: (client) => [
      ask(client, UP.boardWatch, { dayId: "d1", view: "staff" }),
      ask(client, UP.courtRead, { matchId: "m1", after: 0, screen: "court" }),
    ],
    courtPage: (client) => [
      ask(client, UP.courtWatch, { matchId: "m1", after: 0, screen: "court" }),
      ask(client, UP.courtRead, { matchId: "m1", after: 0, screen: "court" }),
    ],
    pad: (client, who) => [
      ask(client, UP.laneOpen, { matchId: "m1", laneId: `lane-of-${who}`, level: "every", second: true }),
      ask(client, UP.courtWatch, { matchId: "m1", after: 0 }),
      ask(client, UP.courtRead, { matchId: "m1", after: 0 }),
    ],
  };
const SCREENS = Object.keys(QUESTIONS) as LiveScreen[];
const cells = LOOKERS.flatMap((role) => SCREENS.map((screen) => ({ role, screen })));

const settings = COACHING_MODES.flatMap((mode) => [false, true].map((bothOwn) => ({ mode, bothOwn })));

describe.each(settings)("traffic while coaching is $mode, both own $bothOwn", ({ mode, bothOwn }) => {
  let bench: SocketBench;
  const sent = new Map<string, string>();
  const incarnation = "log-1";

  beforeAll(async () => {
    bench = await createSocketBench();
    bench.day.coaching = { mode, bothOwn };
    bench.day.opening = OPENING;
    const lead = await bench.connect("helper");
    await openLane(lead, "m1", "lane-1");
    const append = (entries: readonly unknown[]) =>
      ask(lead, UP.laneAppend, { matchId: "m1", laneId: "lane-1", incarnation, entries });
    await append(missedLineBalls(1, 6));
    const open: { readonly name: string; readonly client: Client; readonly replies: unknown[] }[] = [];
    for (const { role, screen } of cells) {
      const client = await bench.connect(role);
      const replies = await Promise.all(QUESTIONS[screen](client, role));
      open.push({ name: `${role} ${screen}`, client, replies });
    }
    // What is pushed afterwards counts as well as what was asked for.
    await append(missedLineBalls(7, 12));
    const last = open.find(({ name }) => name === "director staffBoard");
    await last?.client.until((told) =>
      told.some(({ message }) => JSON.stringify(message).includes('"pos":13')),
    );
    for (const { name, client, replies } of open) sent.set(name, JSON.stringify([replies, client.told]));
  });
  afterAll(() => bench.close());

  it.each(cells)(
    "[CM1, CM5, PR4, LV16] $role, $screen: what is forbidden does not arrive, what is allowed does",
    (cell) => {
      const asked = { ...cell, mode, bothOwn };
      const text = sent.get(`${cell.role} ${cell.screen}`) ?? "";
      const holding = mayHold(asked);
      // A board is made of tiles and alerts, which say what is usual; the rest goes to the court's page.
      const onBoard = ["usual rate", ...(mayHoldAlerts(asked) ? ["watch"] : []), "figure", "verdict"];
      const found = Object.entries(CANARIES).filter(([, canary]) => canary.test(text));
      const names = found.map(([name]) => name);
      if (!holdsFigures(holding)) expect(names).toEqual([]);
      else if (cell.screen === "staffBoard") expect(names).toEqual(onBoard);
      else expect(names).toEqual(expect.arrayContaining(["usual rate", "plan", "level", "fit", "watch"]));
      expect(/"games":|PointCharted/.test(text)).toBe(holding !== "nothing");
      // The caption is made of these two.
      if (cell.screen === "staffBoard" && holdsFigures(holding))
        expect(text).toContain(`"coachingMode":"${mode}","bothOwn":${bothOwn}`);
      if (cell.screen === "staffBoard" || !holdsFigures(holding))
        expect(/"alerts":\[\{/.test(text)).toBe(mayHoldAlerts(asked));
    },
  );
});

describe("a change of the coaching mode while a match is played", () => {
  it("[CM6] is on the staff board within two seconds, though nothing was charted", async () => {
    const world = createWorld();
    const node = world.addNode();
    await node.connect("helper").ask(UP.laneOpen, { matchId: "m1", laneId: "lane-1", level: "every" });
    const coach = node.connect("coach");
    const board = await coach.ask(UP.boardWatch, { dayId: "d1", view: "staff" });
    expect(JSON.stringify(board)).toContain('"coachingMode":"practice","bothOwn":false');
    const before = coach.told.length;
    world.day.coaching = { mode: "notPermitted", bothOwn: false };
    await world.time.advance(2_000);
    expect(JSON.stringify(coach.told.slice(before))).toContain('"coachingMode":"notPermitted"');
  });
});
