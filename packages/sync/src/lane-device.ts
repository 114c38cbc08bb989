import { v4, v7 } from "uuid";
import { deviceTimers, type Timers } from "./mirror-timers.ts";

/** What a lane takes from its device beside the clock, so that a test or a simulation can hold all of it. */
export interface LaneDevice {
  readonly timers: Timers;
  /** In [0, 1). */
  readonly random: () => number;
  /** A new entry's id. */
  readonly entryId: () => string;
  /** A new lane's id; later ids sort after earlier ones. */
  readonly laneId: () => string;
}

export const laneDevice: LaneDevice = {
  timers: deviceTimers,
  random: Math.random,
  entryId: () => v4(),
  laneId: () => v7(),
};
