export type { BetaPosterior, PastMatch } from "./beta-posterior.ts";
export { betaPosterior, central90, DAY_TO_DAY, matchPredictive, PRIOR_STRENGTH } from "./beta-posterior.ts";
export type { Interval } from "./wilson.ts";
export { wilson } from "./wilson.ts";
