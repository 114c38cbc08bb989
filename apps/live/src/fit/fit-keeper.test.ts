import type { AcademyFit } from "@courtloom/decisions";
import { EMPTY_TALLY, fitAcademy } from "@courtloom/decisions";
import { describe, expect, it } from "vitest";
import { createFakeTime } from "../testing/fake-time.ts";
import { fitInThread } from "./fit-in-thread.ts";
import { createFitKeeper } from "./fit-keeper.ts";

const MINUTE = 60_000;
const tally = (x: number, n: number) => ({
  version: 2,
  levels: { every: { counts: { lineMissed: [x, n] }, cells: { BRml: [n, x, n - x, x, n, 0] } } },
});

/** A store of fits, and a fit that is counted; `meanwhile` runs while it is worked out. */
const open = () => {
  const time = createFakeTime();
  const kept: { version: number; fittedMs: number; fit: unknown }[] = [];
  const rows = [
    { playerId: "p", matchId: "m", playedOn: "2026-05-30", version: "2", tally: tally(1, 4) as unknown },
  ];
  const notes: string[] = [];
  let fits = 0;
  let meanwhile = (): void => undefined;
  const keeper = createFitKeeper({
    days: {
      academyTallies: async () => rows,
      choiceFit: async () => kept.at(-1),
      addChoiceFit: async ({ fit }) => {
        kept.push({ version: kept.length + 1, fittedMs: 0, fit });
        return { version: kept.length };
      },
    },
    runtime: {
      ...time,
      isOutage: () => true,
      log: { fault: (what) => void notes.push(what), note: (what) => void notes.push(what) },
    },
    fit: async (tallies): Promise<AcademyFit> => {
      fits += 1;
      const run = meanwhile;
      meanwhile = () => undefined;
      run();
      return fitAcademy(tallies);
    },
  });
  const during = (run: () => void): void => {
    meanwhile = run;
  };
  return { keeper, time, kept, rows, notes, during, fits: () => fits };
};

describe("keeping an academy's fit", () => {
  it("[HF12] fits soon after matches settle, once for several of them, and gives an opening its name", async () => {
    const { keeper, time, kept, fits } = open();
    expect(await keeper.version("curlew")).toBeNull();
    keeper.ask("curlew");
    keeper.ask("curlew");
    expect(fits()).toBe(0);
    await time.advance(MINUTE);
    expect(fits()).toBe(1);
    expect(kept).toMatchObject([{ version: 1, fit: { players: 1, matches: 1, ownSpread: false } }]);
    expect(await keeper.version("curlew")).toBe("1");
  });

  it("[HF12] rests between fits, keeps what was asked meanwhile, and writes nothing that is the same", async () => {
    const { keeper, time, kept, rows, during, fits } = open();
    during(() => keeper.ask("curlew"));
    keeper.ask("curlew");
    await time.advance(2 * MINUTE);
    expect(fits()).toBe(1);
    await time.advance(20 * MINUTE);
    expect([fits(), kept.length]).toEqual([2, 1]);
    rows.push({ playerId: "q", matchId: "m2", playedOn: "2026-05-31", version: "2", tally: tally(2, 5) });
    rows.push({ playerId: "q", matchId: "m3", playedOn: "2026-05-31", version: "9", tally: "unreadable" });
    keeper.ask("curlew");
    await time.advance(20 * MINUTE);
    expect(kept).toMatchObject([{ version: 1 }, { version: 2, fit: { players: 2, matches: 2 } }]);
  });

  it("[HF12] says so when it could not, and goes on with the next match; after the stop it fits nothing", async () => {
    const { keeper, time, kept, notes, during } = open();
    during(() => {
      throw new Error("away");
    });
    keeper.ask("curlew");
    await time.advance(MINUTE);
    expect([notes, kept]).toEqual([["an academy could not be fitted yet"], []]);
    keeper.ask("curlew");
    await time.advance(20 * MINUTE);
    expect(kept).toHaveLength(1);
    keeper.ask("heron");
    keeper.stop();
    keeper.ask("heron");
    await time.advance(60 * MINUTE);
    expect(kept).toHaveLength(1);
  });

  it("[HF12] fits in a thread what it would fit here", async () => {
    const tallies = [{ playerId: "p", tally: EMPTY_TALLY }];
    expect(await fitInThread(tallies)).toEqual(fitAcademy(tallies));
  });
});
