import type { LoggedEntry } from "@courtloom/match-log";
import type { Lane, LaneRecord } from "@courtloom/sync";
import { isCopyGone, readMarks } from "./charted-mark.ts";

/**
 * Watches whether this phone has lost its own copy of a match: it remembers a lane that it no longer holds, or
 * the server says that the lane that leads is this phone's. `held` are the phone's lanes before this opening.
 * Says how many points of other lanes, its own lost one among them, the server has. SPEC PD43.
 */
export const createCopyWatch = (matchId: string, held: readonly LaneRecord[]) => {
  const holds = held.some((lane) => lane.matchId === matchId);
  let gone = !holds && isCopyGone(readMarks(), matchId, held);
  return (
    lane: Pick<Lane, "record" | "status">,
    log: readonly LoggedEntry[],
  ): { readonly sentPoints?: number } => {
    gone ||= !holds && lane.status().leader?.ownPhone === true;
    if (!gone) return {};
    const { laneId } = lane.record();
    const sent = log.filter(({ entry, ...at }) => entry.body.kind === "PointCharted" && at.laneId !== laneId);
    return { sentPoints: sent.length };
  };
};
