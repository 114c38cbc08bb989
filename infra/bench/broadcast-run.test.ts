import { describe, expect, it } from "vitest";
import { type Broadcast, broadcastRun } from "./broadcast-run.ts";

/** Tells each viewer at once, or so many of them. */
const broadcastTo = (viewers: number, reached: number): Broadcast => {
  let tell: (what: string) => void = () => {};
  return {
    viewers,
    close: () => {},
    onTold: (told) => {
      tell = told;
    },
    commit: async (court) => {
      const what = `point ${court}`;
      for (let i = 0; i < reached; i += 1) tell(what);
      return what;
    },
  };
};

describe("a run of broadcasts", () => {
  it("[BN11] has a time for each court and viewer, none under 0 ms", async () => {
    const times = await broadcastRun(broadcastTo(5, 5), 3);
    expect(times).toHaveLength(15);
    expect(Math.min(...times)).toBeGreaterThanOrEqual(0);
  });

  it("[BN11] ends when somebody is not told", async () => {
    await expect(broadcastRun(broadcastTo(5, 4), 1, 50)).rejects.toThrow("Only 4 of 5 viewers were told.");
  });
});
