import { makeLog, openedWith, pointsOf, THREE_SETS } from "@courtloom/match-log/testing";
import type { MatchRow } from "../api-store.ts";
import { describeFigureStore } from "../testing/figure-store-contract.ts";
import { createMemoryFigures } from "../testing/memory-figures.ts";

const person = (playerId: string, displayName: string, own: boolean) => ({
  ...{ playerId, displayName, own, hand: "right", birthYear: null, squad: null, level: null },
});

describeFigureStore("charted matches in memory", async () => {
  const matches = new Map<string, MatchRow & { surface?: "clay" }>();
  const tallied: { academyId: string; playerId: string; matchId: string }[] = [];
  const log = makeLog(pointsOf("AB"), openedWith());
  const own = person("player-a", "Noor V.", true) as MatchRow["players"]["A"];
  const other = person("visitor", "Visitor red", false) as MatchRow["players"]["A"];
  const { store, addChoiceFit } = createMemoryFigures({
    tallied: () => tallied,
    matchOf: (academyId, matchId) => (academyId === "curlew" ? matches.get(matchId) : undefined),
    logOf: () => log,
    lanesOf: () => [{ laneId: "lane-1", chartist: "Dana H." }],
  });
  return {
    store,
    addChoiceFit,
    academyId: "curlew",
    otherId: "heron",
    playerId: own.playerId,
    opponent: other,
    put: async ({ matchId, playedOn, surface, daySurface, side, tallied: isTallied }) => {
      const players = side === "A" ? { A: own, B: other } : { A: other, B: own };
      const known = surface ?? daySurface;
      matches.set(matchId, {
        ...{ matchId, playedOn, players, dayId: null, courtId: null, orderNo: 1, title: "" },
        ...{ partners: { A: null, B: null }, format: THREE_SETS, firstServer: "A", doubles: false },
        ...{ coachingMode: "notKnown", subjects: [side], stage: "over" },
        ...(known ? { surface: known } : {}),
      } as MatchRow);
      if (isTallied) tallied.push({ academyId: "curlew", playerId: own.playerId, matchId });
      return log;
    },
    close: async () => undefined,
  };
});
