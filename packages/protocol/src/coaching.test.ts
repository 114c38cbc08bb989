import { COACHING_MODES, type CoachingMode } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import {
  coachingFactsOf,
  type Holding,
  holdsFigures,
  holdsWords,
  LIVE_ROLES,
  LIVE_SCREENS,
  type LiveRole,
  type LiveScreen,
  liveRoleOf,
  mayHold,
  mayHoldAlerts,
} from "./coaching.ts";

/** Screen by screen, written out apart from the table it tests: with coaching on the player's side, and apart. */
const WANTED: Readonly<Record<LiveScreen, Partial<Record<LiveRole, readonly [Holding, Holding]>>>> = {
  publicWall: { director: ["score", "score"], coach: ["score", "score"], wall: ["score", "score"] },
  staffBoard: { director: ["everything", "captioned"], coach: ["everything", "captioned"] },
  courtPage: { director: ["everything", "captioned"], coach: ["everything", "captioned"] },
  phone: { director: ["everything", "captioned"], coach: ["everything", "captioned"] },
  pad: {
    director: ["scoreAndWords", "score"],
    coach: ["scoreAndWords", "score"],
    helper: ["score", "score"],
  },
};
const ON_SIDE: readonly CoachingMode[] = ["practice", "permitted"];

const cells = LIVE_SCREENS.flatMap((screen) =>
  LIVE_ROLES.flatMap((role) =>
    COACHING_MODES.flatMap((mode) => [true, false].map((bothOwn) => ({ screen, role, mode, bothOwn }))),
  ),
);

describe("what may arrive while a match is played", () => {
  it.each(cells)("[CM1, CM2] $screen, $role, $mode, both own $bothOwn", (cell) => {
    const { screen, role, mode, bothOwn } = cell;
    const [onSide, apart] = WANTED[screen][role] ?? ["nothing", "nothing"];
    expect(mayHold(cell)).toBe(ON_SIDE.includes(mode) && !bothOwn ? onSide : apart);
  });

  it("[CM1] players and guardians hold nothing live, on any screen and in any mode", () => {
    const held = cells.filter(({ role }) => role === "player" || role === "guardian").map(mayHold);
    expect(new Set(held)).toEqual(new Set(["nothing"]));
  });

  it("[CM1] a pad never holds figures, and words come with figures everywhere else", () => {
    for (const cell of cells) {
      const holding = mayHold(cell);
      if (cell.screen === "pad") expect(holdsFigures(holding)).toBe(false);
      if (holdsFigures(holding)) expect(holdsWords(holding)).toBe(true);
    }
    expect((["nothing", "score"] as const).map(holdsWords)).toEqual([false, false]);
  });

  it("[CM3] alerts go with figures; between two own players to the director's staff board alone", () => {
    const held = cells.filter(mayHoldAlerts);
    const places = (bothOwn: boolean) => [
      ...new Set(
        held.filter((cell) => cell.bothOwn === bothOwn).map(({ screen, role }) => `${role} ${screen}`),
      ),
    ];
    expect(places(true)).toEqual(["director staffBoard"]);
    expect(places(false)).toEqual(
      ["staffBoard", "courtPage", "phone"].flatMap((screen) => [`director ${screen}`, `coach ${screen}`]),
    );
  });

  it("[CM4] whoever holds a code is a helper or a wall; a member is what the academy says", () => {
    const at = { academyId: "curlew", sessionId: "s1", dayId: "d1" };
    const account = {
      kind: "account",
      academyId: "curlew",
      userId: "u",
      memberId: "m",
      name: "Maren H.",
    } as const;
    expect([
      liveRoleOf({ ...account, role: "coach" }),
      liveRoleOf({ ...account, role: "director" }),
      liveRoleOf({ kind: "courtside", ...at, courtId: "c1", name: "Dana H." }),
      liveRoleOf({ kind: "wall", ...at }),
    ]).toEqual(["coach", "director", "helper", "wall"]);
    const card = { coachingMode: "practice", players: { A: { own: true }, B: { own: false } } } as const;
    expect(coachingFactsOf(card)).toEqual({ mode: "practice", bothOwn: false });
    expect(coachingFactsOf({ ...card, players: { A: { own: true }, B: { own: true } } }).bothOwn).toBe(true);
  });
});
