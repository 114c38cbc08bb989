import type { ShotAsks } from "@courtloom/match-log";

/**
 * What a match asks of its subjects' balls when it opens, until a plan asks for more: of a line ball whether it was
 * on (the ball that came, the opponent's place, the time there was), of a short ball its height and whether the
 * player came in behind it. The most telling first. SPEC D11.
 */
export const STARTER_ASKS: ShotAsks = {
  line: ["ballHeight", "opponent", "ballTime"],
  short: ["ballHeight", "cameIn"],
};
