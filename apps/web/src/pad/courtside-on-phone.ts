import type { Outbox } from "@courtloom/sync";
import type { Courtside } from "./courtside.ts";

/**
 * The court as this phone remembers it, for going on charting when the server cannot be asked: the
 * matches of the latest lane's court and person that are not sealed. `undefined` on a phone that never charted.
 */
export const courtsideOnPhone = async (outbox: Outbox): Promise<Courtside | undefined> => {
  const lanes = (await outbox.lanes()).filter(
    (lane) => lane.opening && lane.continuedBy === undefined && lane.sealedWallMs === undefined,
  );
  const latest = lanes.at(-1);
  if (!latest) return undefined;
  const { courtName, chartist } = latest;
  const mine = lanes.filter((lane) => lane.courtName === courtName && lane.chartist === chartist);
  return {
    courtName,
    chartist,
    staff: false,
    matches: mine.toReversed().map(({ matchId, names, opening }) => {
      const opened = opening?.entry.body.kind === "MatchOpened" ? opening.entry.body : undefined;
      return {
        matchId,
        names,
        own: { A: opened?.players.A.own ?? false, B: opened?.players.B.own ?? false },
        subjects: opened?.subjects ?? [],
        state: "playing" as const,
        due: "on this phone",
      };
    }),
  };
};
