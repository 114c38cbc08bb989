import { byPlayer } from "@courtloom/core";
import type { DayStore, MatchCard } from "@courtloom/db";
import type { PastTallies, Tally } from "@courtloom/decisions";

/** A version 1 tally as it was written; undefined for one that this code cannot read, which then counts for nothing. */
const readTally = (raw: unknown): Tally | undefined => {
  const tally = raw as Partial<Tally> | null;
  return tally?.version === 1 && tally.lineMissed !== undefined && tally.lineShare !== undefined
    ? { version: 1, lineMissed: tally.lineMissed, lineShare: tally.lineShare }
    : undefined;
};

/** What the academy and the two players have charted so far, to work usual rates out from. */
export const pastTallies = async (
  days: Pick<DayStore, "academyTallies">,
  card: Pick<MatchCard, "academyId" | "matchId" | "players">,
): Promise<PastTallies> => {
  const rows = await days.academyTallies({ academyId: card.academyId });
  const read = rows
    .filter(({ matchId }) => matchId !== card.matchId)
    .flatMap(({ playerId, tally }) => {
      const known = readTally(tally);
      return known ? [{ playerId, tally: known }] : [];
    });
  return {
    academy: read.map(({ tally }) => tally),
    own: byPlayer((side) =>
      read.filter(({ playerId }) => playerId === card.players[side].playerId).map(({ tally }) => tally),
    ),
  };
};
