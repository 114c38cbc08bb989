import { enterDemo } from "./account/enter-demo.ts";
import { me } from "./account/me.ts";
import { endPhone } from "./code/end-phone.ts";
import { issueCodes } from "./code/issue-codes.ts";
import { listCodes } from "./code/list-codes.ts";
import { revokeCode } from "./code/revoke-code.ts";
import { createDay } from "./day/create-day.ts";
import { getDay } from "./day/get-day.ts";
import { listDays } from "./day/list-days.ts";
import { choiceCost } from "./figures/cost-of-choices.ts";
import { lineMap } from "./figures/line-map-of.ts";
import { matchFigures } from "./figures/match-figures-of.ts";
import { playerFigures } from "./figures/player-figures.ts";
import { pointsBehind } from "./figures/points-behind.ts";
import { checkFile } from "./lane/check-file.ts";
import { takeInFile } from "./lane/take-in-file.ts";
import { addMatch } from "./match/add-match.ts";
import { getMatch } from "./match/get-match.ts";
import { listLanes } from "./match/list-lanes.ts";
import { readLog } from "./match/read-log.ts";
import { setCoachingMode } from "./match/set-coaching-mode.ts";
import { courtWords } from "./plan/court-words.ts";
import { getPlan } from "./plan/get-plan.ts";
import { listPlans } from "./plan/list-plans.ts";
import { planForMatch } from "./plan/plan-for-match.ts";
import { savePlan } from "./plan/save-plan.ts";
import { startFromStarter } from "./plan/start-from-starter.ts";
import { addPlayer } from "./player/add-player.ts";
import { listPlayers } from "./player/list-players.ts";
import { createAcademy } from "./setup/create-academy.ts";
import { loadDemo } from "./setup/load-demo.ts";
import { status } from "./setup/status.ts";
import { trpc } from "./trpc.ts";
import { getWatch } from "./watch/get-watch.ts";
import { saveWatch } from "./watch/save-watch.ts";

/** Every procedure by noun and verb; its audience is in `access.ts`. */
export const appRouter = trpc.router({
  setup: { status, createAcademy, loadDemo },
  account: { me, enterDemo },
  day: { list: listDays, create: createDay, get: getDay },
  match: { get: getMatch, add: addMatch, setCoachingMode, log: readLog, lanes: listLanes },
  lane: { checkFile, takeInFile },
  code: { list: listCodes, issue: issueCodes, revoke: revokeCode, endPhone },
  player: { list: listPlayers, add: addPlayer },
  figures: { player: playerFigures, points: pointsBehind, lineMap, cost: choiceCost, match: matchFigures },
  plan: {
    list: listPlans,
    get: getPlan,
    save: savePlan,
    startFromStarter,
    forMatch: planForMatch,
    courtWords,
  },
  watch: { get: getWatch, save: saveWatch },
});

export type AppRouter = typeof appRouter;

/** Calls procedures inside the server, with the same checks as over the wire. */
export const createCaller = trpc.createCallerFactory(appRouter);
