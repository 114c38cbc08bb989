import { aheadIn, LOVE, type Pair, plusOne, type SideIndex } from "./pair.ts";
import type { TimePolicy } from "./score-event.ts";
import { type Bell, endMatch, isOver, type Standing } from "./standing.ts";
import type { Rulebook } from "./win-point.ts";
import { winGame } from "./win-point.ts";

/** The bell: what becomes of the unfinished game, then who won by sets, games and perhaps points. SPEC SC30 to SC33. */
export function ringBell(book: Rulebook, standing: Standing, policy: TimePolicy): Standing {
  const leader = aheadIn(standing.points);
  const lead = Math.abs(standing.points[0] - standing.points[1]);
  const isBegun = standing.points[0] + standing.points[1] > 0;
  if (!isBegun || policy.unfinishedGame === "ignored") return settle(standing, policy, standing.points);
  if (policy.unfinishedGame === "decidingPoint" && leader === null)
    return playOn(standing, { policy, decides: "game" });
  const isGiven = leader !== null && (policy.unfinishedGame !== "needsLeadOfTwo" || lead >= 2);
  return isGiven ? giveGame(book, standing, leader, policy) : settle(standing, policy, standing.points);
}

/** The deciding point after the bell, won by the side at `winner`. */
export function winAfterBell(book: Rulebook, standing: Standing, bell: Bell, winner: SideIndex): Standing {
  if (bell.decides === "game") return giveGame(book, standing, winner, bell.policy);
  return endMatch({ ...standing, points: plusOne(standing.points, winner) }, "timeUp", winner);
}

/** The unfinished game is given; no change of ends follows, because play is over. */
function giveGame(book: Rulebook, standing: Standing, winner: SideIndex, policy: TimePolicy): Standing {
  const given = winGame(book, standing, winner);
  const { changesOfEnds } = standing;
  if (isOver(given)) return endMatch({ ...given, changesOfEnds }, "timeUp", winner);
  return settle({ ...given, changesOfEnds }, policy, LOVE);
}

function settle(standing: Standing, policy: TimePolicy, pointsLeft: Pair): Standing {
  const score = { ...standing, points: LOVE };
  const winner =
    aheadIn(score.setsWon) ??
    aheadIn(gamesCounted(score, policy)) ??
    (policy.pointsDecide === true ? aheadIn(pointsLeft) : null);
  if (winner === null && policy.drawAllowed === false) return playOn(score, { policy, decides: "match" });
  return endMatch(score, "timeUp", winner);
}

function gamesCounted(standing: Standing, policy: TimePolicy): Pair {
  if (policy.gamesCounted !== "match") return standing.games;
  return standing.sets.reduce<Pair>(
    (total, set) => (set[2] === "MTB" ? total : [total[0] + set[0], total[1] + set[1]]),
    standing.games,
  );
}

const playOn = (standing: Standing, bell: Bell): Standing => ({
  ...standing,
  endsDue: false,
  pause: "point",
  bell,
});
