import { DAY_TO_DAY } from "@courtloom/stats";
import { drawBeta } from "@courtloom/stats/testing";
import type { Draws } from "../draws.ts";

/** The rate of one match of a player whose true rate is `rate`, in (0, 1): Beta(60·rate, 60·(1 − rate)). */
export const drawDay = (draws: Draws, rate: number): number =>
  drawBeta(draws, DAY_TO_DAY * rate, DAY_TO_DAY * (1 - rate));
