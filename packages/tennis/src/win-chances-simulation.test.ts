import type { Side } from "@courtloom/core";
import { describe, expect, it } from "vitest";
import { format, next, play, point, points } from "../test-support/play.ts";
import { randomFrom } from "../test-support/random.ts";
import { foldScore } from "./fold-score.ts";
import type { MatchFormat } from "./format.ts";
import type { ScoreBoard } from "./score-board.ts";
import type { ScoreEvent } from "./score-event.ts";
import { createWinChances } from "./win-chances.ts";

const SEED = 20261125;
const MATCHES = 1500;
const [P_A, P_B] = [0.63, 0.58];

const ODD: Record<string, MatchFormat> = {
  "short sets, nine-point tie-breaks served in pairs, one clear point": format({
    gamesPerSet: 4,
    tiebreakAt: 3,
    tiebreakTo: 5,
    tiebreakWinBy: 1,
    tbServe: "pairs",
    noAd: true,
    finalSet: { kind: "matchTiebreak", to: 7, winBy: 1 },
  }),
  "a set to five without a lead, decided at the second deuce": format({
    sets: 1,
    gamesPerSet: 5,
    gameLead: 1,
    tiebreakAt: null,
    noAd: 2,
  }),
  "six games in each set, tie-break at three all": format({ fixedGames: 6, tiebreakAt: 3 }),
  "seven games in one set": format({ sets: 1, fixedGames: 7, tiebreakAt: null }),
  "a set to three by two, without a tie-break": format({ sets: 1, gamesPerSet: 3, tiebreakAt: null }),
  "tie-breaks only, the fifth to ten, all served in pairs": format({
    sets: 5,
    tieBreakOnly: { to: 7 },
    tbServe: "pairs",
    finalSet: { kind: "matchTiebreak", to: 10 },
  }),
};

/** The points that finish the match from `board`, each won by the server with one chance per side. */
function playOut(board: ScoreBoard, random: () => number): { events: ScoreEvent[]; winner: Side | null } {
  const events: ScoreEvent[] = [];
  let now = board;
  while (!now.state.over) {
    const chanceOfA = now.state.server === "A" ? P_A : 1 - P_B;
    const event = point(random() < chanceOfA ? "A" : "B");
    events.push(event);
    now = next(now, event);
  }
  return { events, winner: now.state.winner };
}

describe(`matches played out point by point, seed ${SEED}`, () => {
  it.each(Object.entries(ODD))("[W1] agree with the chance within 3.5 standard errors: %s", (_, rules) => {
    const random = randomFrom(SEED);
    const from = play({ format: rules, firstServer: "B" }, points("ABB"));
    const expected = createWinChances(rules, P_A, P_B).ofA(from.state) ?? Number.NaN;
    let wins = 0;
    for (let match = 0; match < MATCHES; match++) {
      const { events, winner } = playOut(from, random);
      wins += winner === "A" ? 1 : 0;
      if (match > 20) continue;
      const folded = foldScore(from.setup, [...points("ABB"), ...events]);
      expect(folded.ok && folded.value.state.winner).toBe(winner);
    }
    const standardError = Math.sqrt((expected * (1 - expected)) / MATCHES);
    expect(Math.abs(wins / MATCHES - expected)).toBeLessThan(3.5 * standardError);
  });
});
