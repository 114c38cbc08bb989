export type { DemoMatchSetting, DemoMatchSide } from "./play-match.ts";
export { playMatch } from "./play-match.ts";
export type { Random } from "./random.ts";
export { createRandom } from "./random.ts";
export type { DemoPlayer, DemoStaff, Temper } from "./roster.ts";
export {
  DEMO_ACADEMY,
  DEMO_CHARTISTS,
  DEMO_DIRECTOR_EMAIL,
  DEMO_PLAYERS,
  DEMO_STAFF,
  DEMO_VISITORS,
} from "./roster.ts";
export type { DemoMatch } from "./season.ts";
export { DEMO_FORMAT, demoMatch, playSeasons } from "./season.ts";
