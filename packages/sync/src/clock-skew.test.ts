import { describe, expect, it } from "vitest";
import { stepLane } from "./lane-machine.ts";
import type { LaneEnv, LaneState } from "./lane-state.ts";
import { laneStatus } from "./lane-status.ts";
import { startLane } from "./start-lane.ts";

const WALL_MS = 1_780_000_000_000;
const env: LaneEnv = { random: () => 0, wallMs: () => WALL_MS, laneId: () => "lane-2" };
const fresh = startLane(
  {
    ...{ laneId: "lane-1", matchId: "match-1", courtName: "Court 1", chartist: "Ioan P.", level: "every" },
    ...{ names: { A: "Noor V.", B: "Elsbeth K." }, acked: 0, epoch: 1, rejected: [], startedWallMs: 1 },
  },
  [],
);
const heard = (state: LaneState, aheadMs: number): LaneState => {
  const reply = { ok: true, serverMs: WALL_MS - aheadMs, leads: true } as const;
  return stepLane(state, { type: "beatAnswered", laneId: "lane-1", reply }, env).state;
};
const MINUTE = 60_000;

describe("a phone's clock", () => {
  it("[SY20] is said to be off from two minutes on, either way, in whole minutes, by the server's answers", () => {
    expect(laneStatus(fresh).clockAheadMinutes).toBeUndefined();
    expect(laneStatus(heard(fresh, 2 * MINUTE)).clockAheadMinutes).toBeUndefined();
    expect(laneStatus(heard(fresh, 5 * MINUTE + 400)).clockAheadMinutes).toBe(5);
    expect(laneStatus(heard(fresh, -61 * MINUTE)).clockAheadMinutes).toBe(-61);
  });

  it("[SY20] changes nothing while it stays as it was, and is right again once it agrees", () => {
    const off = heard(fresh, 5 * MINUTE);
    expect(heard(off, 5 * MINUTE + 900)).toBe(off);
    expect(laneStatus(heard(off, 3_000)).clockAheadMinutes).toBeUndefined();
  });
});
