import { createMemoryOutbox, type LaneRecord } from "@courtloom/sync";
import { describe, expect, it } from "vitest";
import { courtsideOnPhone } from "./courtside-on-phone.ts";
import { matchOpened } from "./testing/match-opened.ts";

const lane = (matchId: string, startedWallMs: number, over: Partial<LaneRecord> = {}): LaneRecord => ({
  ...{ laneId: `lane-${matchId}`, matchId, courtName: "Court 3", chartist: "Ioan P.", level: "every" },
  ...{ names: { A: "Noor V.", B: "Elsbeth K." }, acked: 0, epoch: 1, rejected: [] },
  ...{ opening: { pos: 1, laneId: "desk", epoch: 0, entry: { body: matchOpened } } as never },
  ...{ startedWallMs, ...over },
});

const phoneWith = async (...lanes: readonly LaneRecord[]) => {
  const outbox = createMemoryOutbox();
  for (const each of lanes) await outbox.saveLane(each);
  return outbox;
};

describe("the court as a phone remembers it", () => {
  it("[PD40] has the match first that was charted last, not the one that was opened last", async () => {
    const outbox = await phoneWith(lane("m1", 100), lane("m2", 200));
    expect((await courtsideOnPhone(outbox))?.matches.map(({ matchId }) => matchId)).toEqual(["m2", "m1"]);
    await outbox.add("lane-m1", {
      ...{ v: 1, id: "e1", n: 1, atMs: 1, wallMs: 300, body: { kind: "PointReplayed" } },
    });
    expect((await courtsideOnPhone(outbox))?.matches.map(({ matchId }) => matchId)).toEqual(["m1", "m2"]);
  });

  it("[PD40] is the named match's court, and says whether staff chart it", async () => {
    const outbox = await phoneWith(
      lane("m1", 100, { staff: true, courtName: "Court 1", chartist: "Tobias A." }),
      lane("m2", 200),
    );
    expect(await courtsideOnPhone(outbox, "m1")).toMatchObject({
      ...{ courtName: "Court 1", chartist: "Tobias A.", staff: true },
      matches: [{ matchId: "m1" }],
    });
    expect(await courtsideOnPhone(outbox, "m9")).toMatchObject({ courtName: "Court 3", staff: false });
  });

  it("[PD40] leaves out what cannot be charted: never opened, sealed, continued elsewhere", async () => {
    const { opening: _, ...never } = lane("m1", 100);
    const outbox = await phoneWith(
      never,
      lane("m2", 200, { sealedWallMs: 1 }),
      lane("m3", 300, { continuedBy: "lane-m4" }),
    );
    expect(await courtsideOnPhone(outbox)).toBeUndefined();
  });
});
