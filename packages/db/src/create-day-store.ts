import { readJudgedAlerts } from "./alerts/judged-alerts.ts";
import { readAcademy, setupAcademy } from "./day/academies.ts";
import { addMatch } from "./day/add-match.ts";
import { changeMatch, setMatchOver } from "./day/change-match.ts";
import { chartedMatches, matchLogs } from "./day/charted-matches.ts";
import { addChoiceFit, readChoiceFit } from "./day/choice-fits.ts";
import { readDayBoard } from "./day/day-board.ts";
import { createDay, listDays } from "./day/days.ts";
import { importMatches } from "./day/import-matches.ts";
import { readDayMatches, readMatchCard } from "./day/match-cards.ts";
import { addMember, listMembers } from "./day/members.ts";
import { readPlans, readPlanVersions } from "./day/plans.ts";
import { addPlayer, changePlayer, listPlayers, readPlayer } from "./day/players.ts";
import { savePlan } from "./day/save-plan.ts";
import { academyTallies, playerHistory, writeTally } from "./day/tallies.ts";
import { readWatchSettings, saveWatchSetting } from "./day/watch-settings.ts";
import { writeAudit } from "./day/write-audit.ts";
import type { DayStore } from "./day-store.ts";
import type { Db } from "./open-db.ts";

/** The day's functions over one pool. */
export function createDayStore(db: Db): DayStore {
  return {
    hasAcademy: async () => {
      const [row] = await db.sql<{ has: boolean }[]>`select has_any_academy() as has`;
      return row?.has ?? false;
    },
    demoAcademyId: async () => {
      const [row] = await db.sql<{ id: string | null }[]>`select demo_academy() as id`;
      return row?.id ?? undefined;
    },
    setupAcademy: (academy) => setupAcademy(db, academy),
    academy: (args) => readAcademy(db, args),
    addMember: (added) => addMember(db, added),
    listMembers: (args) => listMembers(db, args),
    listDays: (args) => listDays(db, args),
    createDay: (day) => createDay(db, day),
    dayBoard: (args) => readDayBoard(db, args),
    dayMatches: (args) => readDayMatches(db, args),
    addMatch: (match) => addMatch(db, match),
    changeMatch: (args) => changeMatch(db, args),
    matchCard: (args) => readMatchCard(db, args),
    setMatchOver: (args) => setMatchOver(db, args),
    addPlayer: (player) => addPlayer(db, player),
    changePlayer: (player) => changePlayer(db, player),
    listPlayers: (args) => listPlayers(db, args),
    player: (args) => readPlayer(db, args),
    playerHistory: (args) => playerHistory(db, args),
    academyTallies: (args) => academyTallies(db, args),
    writeTally: (args) => writeTally(db, args),
    importMatches: (args) => importMatches(db, args),
    writeAudit: (args) => writeAudit(db, args),
    chartedMatches: (args) => chartedMatches(db, args),
    matchLogs: (args) => matchLogs(db, args),
    choiceFit: (args) => readChoiceFit(db, args),
    addChoiceFit: (args) => addChoiceFit(db, args),
    plans: (args) => readPlans(db, args),
    planVersions: (args) => readPlanVersions(db, args),
    savePlan: (version) => savePlan(db, version),
    watchSettings: (args) => readWatchSettings(db, args),
    saveWatchSetting: (setting) => saveWatchSetting(db, setting),
    judgedAlerts: (args) => readJudgedAlerts(db, args),
  };
}
