import type { LaneRecord, Outbox } from "@courtloom/sync";
import type { Courtside, CourtsideMatch } from "./courtside.ts";

/** Lanes that can still be charted in, the one that was charted in last first. */
const lanesInUse = async (outbox: Outbox): Promise<readonly LaneRecord[]> => {
  const lanes = (await outbox.lanes()).filter(
    (lane) => lane.opening && lane.continuedBy === undefined && lane.sealedWallMs === undefined,
  );
  const used = await Promise.all(
    lanes.map(async (lane) => {
      const last = (await outbox.entries(lane.laneId)).at(-1);
      return { lane, usedMs: Math.max(lane.startedWallMs, last?.wallMs ?? 0) };
    }),
  );
  return used.sort((a, b) => b.usedMs - a.usedMs).map(({ lane }) => lane);
};

const toMatch = ({ matchId, names, opening }: LaneRecord): CourtsideMatch => {
  const opened = opening?.entry.body.kind === "MatchOpened" ? opening.entry.body : undefined;
  return {
    matchId,
    names,
    own: { A: opened?.players.A.own ?? false, B: opened?.players.B.own ?? false },
    subjects: opened?.subjects ?? [],
    state: "playing",
    due: "on this phone",
  };
};

/**
 * The court as this phone remembers it, for going on charting when the server cannot be asked: the matches of one
 * court and person that are not sealed, the one that was charted last first. With `matchId`, that match's court;
 * else the latest's. `undefined` on a phone that never charted. SPEC PD40.
 */
export const courtsideOnPhone = async (outbox: Outbox, matchId?: string): Promise<Courtside | undefined> => {
  const lanes = await lanesInUse(outbox);
  const latest = lanes.find((lane) => lane.matchId === matchId) ?? lanes[0];
  if (!latest) return undefined;
  const { courtName, chartist, staff = false } = latest;
  const mine = lanes.filter((lane) => lane.courtName === courtName && lane.chartist === chartist);
  const ordered = [latest, ...mine.filter((lane) => lane.matchId !== latest.matchId)];
  return { courtName, chartist, staff, matches: ordered.map(toMatch) };
};
