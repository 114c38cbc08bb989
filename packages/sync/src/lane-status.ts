import type { Entry } from "@courtloom/match-log";
import type { LaneChartist, Leader, RefusalCode, RejectedEntry } from "@courtloom/protocol";
import { unsentCount } from "./lane-counts.ts";
import type { LaneState } from "./lane-state.ts";

/** `connecting` until the lane was open once; afterwards a lost link is `noSignal`. */
export type LaneSignal = "connecting" | "open" | "noSignal" | "refused";

/** An entry that the server will never take, with its reason; it stays on the phone. */
export interface QuarantinedEntry extends RejectedEntry {
  readonly entry: Entry;
}

/** What a screen says about a lane. */
export interface LaneStatus {
  readonly signal: LaneSignal;
  readonly refusal?: RefusalCode;
  /** Who leads the match instead of this lane, which wants to lead; absent while it does, or has not heard yet. */
  readonly leader?: Leader;
  /** This lane is a second one, which is as it should be; with who leads, if anybody is known to. */
  readonly second?: { readonly leader?: Leader };
  /** Who wrote the match's other lanes, as far as heard. The same array until it changes. */
  readonly others: readonly LaneChartist[];
  readonly unsent: number;
  readonly rejected: readonly QuarantinedEntry[];
  /** True when an entry is held by the open page alone. */
  readonly unstored: boolean;
  /** Whole minutes that this phone's clock is ahead of the server's, negative behind; absent when they agree within 2 min. */
  readonly clockAheadMinutes?: number;
}

const signalOf = (state: LaneState): LaneSignal => {
  // It only waits for the lead, and cannot hear how that one fares.
  if (state.stoppedBy === "lead_taken" && state.link === "down") return "noSignal";
  if (state.phase === "stopped") return "refused";
  // One failure is a hiccup; from the second in a row on, nothing gets through.
  if (state.failures > 1) return "noSignal";
  if (state.phase === "open" && state.link === "up") return "open";
  return state.link === "down" && state.record.opening ? "noSignal" : "connecting";
};

const NOBODY: readonly LaneChartist[] = [];

const leading = ({ record, leader }: LaneState): Pick<LaneStatus, "leader" | "second"> => {
  const known = leader ? { leader } : {};
  return record.second ? { second: known } : known;
};

export const laneStatus = (state: LaneState): LaneStatus => ({
  signal: signalOf(state),
  ...(state.stoppedBy ? { refusal: state.stoppedBy } : {}),
  ...leading(state),
  others: state.others ?? NOBODY,
  unsent: unsentCount(state),
  rejected: state.record.rejected.flatMap((rejected) => {
    const entry = state.entries[rejected.n - 1];
    return entry ? [{ ...rejected, entry }] : [];
  }),
  unstored: state.unstored,
  ...(state.clockAheadMinutes === undefined ? {} : { clockAheadMinutes: state.clockAheadMinutes }),
});
