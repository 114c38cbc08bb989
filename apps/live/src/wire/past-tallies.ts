import { byPlayer } from "@courtloom/core";
import type { DayStore, MatchCard } from "@courtloom/db";
import { type PastTallies, readTally } from "@courtloom/decisions";

/** What the academy and the two players have charted so far, to work usual rates out from. One that cannot be read counts for nothing. */
export const pastTallies = async (
  days: Pick<DayStore, "academyTallies">,
  card: Pick<MatchCard, "academyId" | "matchId" | "players">,
): Promise<PastTallies> => {
  const rows = await days.academyTallies({ academyId: card.academyId });
  const read = rows
    .filter(({ matchId }) => matchId !== card.matchId)
    .flatMap(({ playerId, tally }) => {
      const known = readTally(tally);
      return known.ok ? [{ playerId, tally: known.value }] : [];
    });
  return {
    academy: read.map(({ tally }) => tally),
    own: byPlayer((side) =>
      read.filter(({ playerId }) => playerId === card.players[side].playerId).map(({ tally }) => tally),
    ),
  };
};
