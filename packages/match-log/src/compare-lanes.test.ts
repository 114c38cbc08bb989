import type { Side } from "@courtloom/core";
import { otherSide } from "@courtloom/core";
import type { ScoreState } from "@courtloom/tennis";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compareLanes, type LaneComparison, type LaneRow, lanesBeside } from "./compare-lanes.ts";
import { type EntryBody, type LoggedEntry, SECOND_EPOCH } from "./entry.ts";
import { foldLog } from "./fold.ts";
import { makeLog, openedWith, pointsOf, pointTo } from "./testing/make-log.ts";
import type { MatchView } from "./view.ts";

const EPOCHS = { lead: 1, second: SECOND_EPOCH, taker: 2 } as const;
type Lane = keyof typeof EPOCHS;

/** A log that grows: lanes write in the order of the calls; `idOf` finds an entry by its pos. */
const createLog = (opened = openedWith()) => {
  const entries: LoggedEntry[] = makeLog([], opened);
  const write = (lane: Lane | "desk", body: EntryBody): string => {
    const pos = entries.length + 1;
    const [made] = makeLog([body]).slice(1);
    if (!made) throw new Error("an entry");
    const id = `00000000-0000-4000-8000-${String(pos).padStart(12, "0")}`;
    const at = { pos, laneId: lane, epoch: lane === "desk" ? 0 : EPOCHS[lane] };
    entries.push({ ...made, ...at, entry: { ...made.entry, id } });
    return id;
  };
  const view = (): MatchView => {
    const folded = foldLog(entries);
    if (!folded.ok) throw new Error(folded.error);
    return folded.value;
  };
  const compare = (laneId: Lane = "second"): LaneComparison => {
    const comparison = compareLanes(entries, view(), laneId);
    if (!comparison) throw new Error("it folds");
    return comparison;
  };
  const play = (lane: Lane, letters: string) => pointsOf(letters).map((body) => write(lane, body));
  return { entries, write, view, compare, play };
};

const winners = (view: MatchView): string => view.points.map(({ point }) => point.winner).join("");
const kinds = ({ rows }: LaneComparison): string =>
  rows.map(({ kind }) => ({ same: "=", differs: "x", leadOnly: "-", laneOnly: "+" })[kind]).join("");
const stated = (score: ScoreState, missed: boolean): EntryBody => ({
  kind: "ScoreStated",
  score: {
    sets: [...score.sets],
    games: score.games,
    points: score.points,
    ...(score.server ? { server: score.server } : {}),
  },
  missed,
});
const mergeAll = (log: ReturnType<typeof createLog>, lane: Lane, takes: (row: LaneRow) => boolean): void => {
  for (let i = 0; i < 500; i += 1) {
    const row = log.compare(lane).rows.find((each) => each.merge && takes(each));
    if (!row?.merge) return;
    log.write("lead", row.merge);
  }
  throw new Error("merging ends");
};

describe("two lanes beside each other", () => {
  it("[L22] has a row per point, from the second lane's first to its last, in the match's order", () => {
    const log = createLog();
    log.play("lead", "AAB");
    log.write("second", stated(log.view().score, true));
    log.play("lead", "ABB");
    log.play("second", "ABB");
    log.play("lead", "AA");
    expect(kinds(log.compare())).toBe("===");
    expect(log.compare()).toMatchObject({ role: "second", pointCount: 3, counts: { same: 3, leadOnly: 0 } });
    expect(lanesBeside(log.view())).toEqual(["second"]);
  });

  it("[L22] says what differs: winner, serve, ending, number of balls; not what only one charted", () => {
    const log = createLog();
    const shot = { striker: "A", from: { right: 0, away: -1000 }, result: "winner" } as const;
    const every = { level: "every", serve: { outcome: "firstIn", faults: 0 }, shots: [shot] } as const;
    log.write("lead", pointTo("A", every));
    log.write("second", pointTo("A"));
    log.write("lead", pointTo("A", every));
    const missed = { ...shot, result: "missed", miss: "net" } as const;
    const serve = { outcome: "secondIn", faults: 1 } as const;
    log.write("second", pointTo("B", { ...every, serve, shots: [{ ...shot, striker: "B" }, missed] }));
    log.write("lead", pointTo("B"));
    log.write("second", pointTo("B", every));
    const { rows } = log.compare();
    expect(rows.map(({ differences, chartsMore }) => [differences, chartsMore])).toEqual([
      [[], false],
      [["winner", "serve", "ending", "shots"], false],
      [[], true],
    ]);
    expect(rows.map(({ merge }) => merge?.kind)).toEqual([undefined, "EntryAmended", "EntryAmended"]);
  });

  it("[L23] puts a point that only the other has before the next one, and at the end where there is none", () => {
    const log = createLog();
    const [first] = log.play("lead", "AB");
    log.play("second", "BABA");
    const rows = log.compare().rows.filter(({ kind }) => kind === "laneOnly");
    expect(rows.map(({ merge }) => merge?.kind === "EntryInserted" && merge.before)).toEqual([
      first,
      undefined,
    ]);
    mergeAll(log, "second", () => true);
    expect(winners(log.view())).toBe("BABA");
    expect(kinds(log.compare())).toBe("====");
  });

  it("[L23] fills a missed stretch before the score that was stated after it, and before the match's end", () => {
    const log = createLog();
    log.play("lead", "A");
    const statement = log.write("lead", { kind: "ScoreStated", score: { points: [2, 1] }, missed: true });
    log.play("lead", "A");
    log.write("lead", { kind: "MatchEnded", how: { type: "retired", side: "B" } });
    log.play("second", "ABAAB");
    const inserted = log.compare().rows.filter(({ kind }) => kind === "laneOnly");
    expect(inserted.map(({ merge }) => merge?.kind === "EntryInserted" && merge.before)).toEqual([
      statement,
      statement,
      log.view().trail.facts.at(-1)?.id,
    ]);
    mergeAll(log, "second", () => true);
    expect(winners(log.view())).toBe("ABAAB");
    expect(log.view().setAside).toEqual([]);
  });

  it("[L24] shows what was merged as the same, under the other's name, and as before once it is voided", () => {
    const log = createLog();
    log.play("lead", "AAB");
    log.play("second", "ABBA");
    expect(kinds(log.compare())).toBe("=x=+");
    mergeAll(log, "second", () => true);
    expect(kinds(log.compare())).toBe("====");
    expect(log.view().points.map(({ laneId }) => laneId)).toEqual(["lead", "second", "lead", "second"]);
    const merges = log.compare().rows.flatMap(({ mergedBy }) => mergedBy ?? []);
    expect(merges).toEqual(log.entries.slice(-2).map(({ entry }) => entry.id));
    for (const target of merges) log.write("lead", { kind: "EntryVoided", target });
    expect(kinds(log.compare())).toBe("=x=+");
    expect(log.view().points.map(({ laneId }) => laneId)).toEqual(["lead", "lead", "lead"]);
  });

  it("[L25] of a lane that lost the lead compares what it charted or mended after that, and nothing before", () => {
    const log = createLog();
    const before = log.play("lead", "AAB");
    log.write("desk", { kind: "LeadTaken", laneId: "taker", epoch: 2 });
    log.play("taker", "AB");
    log.write("lead", { kind: "EntryVoided", target: before[2] ?? "" });
    log.play("lead", "AAAB");
    expect(log.compare("lead")).toMatchObject({ role: "late", pointCount: 4 });
    expect(kinds(log.compare("lead"))).toBe("x+==");
    expect(lanesBeside(log.view())).toEqual(["lead"]);
  });

  it("[L24] leaves out balls of players whom the lead does not chart", () => {
    const log = createLog(openedWith({ subjects: ["A", "B"] }));
    const shots = [{ striker: "B", from: { right: 0, away: 1000 } }] as const;
    log.write("lead", { kind: "SubjectsChanged", subjects: ["A"] });
    log.write("second", { kind: "SubjectsChanged", subjects: ["B"] });
    log.write("lead", pointTo("A", { level: "key" }));
    log.write("second", pointTo("B", { level: "key", shots, seat: "side", endOfA: "left" }));
    const [row] = log.compare().rows;
    expect(row?.merge?.kind === "EntryAmended" && row.merge.to).toEqual(
      pointTo("B", { level: "score", shots: [], seat: "side", endOfA: "left" }),
    );
  });

  it("[L25] of a lane without a point has no rows", () => {
    const log = createLog();
    log.play("lead", "AB");
    log.write("second", { kind: "EndsStated", endOfA: "near" });
    expect(log.compare()).toMatchObject({ rows: [], pointCount: 0 });
  });
});

/** What goes wrong in one stretch of six points: nothing two people could not tell from something else. */
interface Slip {
  readonly kind: "none" | "leadMisses" | "secondMisses" | "leadWrong" | "secondWrong";
  /** Misses: how many points, 1 to 3. */
  readonly length: number;
  readonly secondFirst: boolean;
}

const STRETCH = 6;
const slips: fc.Arbitrary<readonly Slip[]> = fc.array(
  fc.record<Slip>({
    kind: fc.constantFrom("none", "leadMisses", "secondMisses", "leadWrong", "secondWrong"),
    length: fc.integer({ min: 1, max: 3 }),
    secondFirst: fc.boolean(),
  }),
  { minLength: 8, maxLength: 8 },
);

/** A true match, and how two people chart it: with the next point each says the score, after a miss or a wrong winner. */
const chartTwice = (truth: readonly Side[], chosen: readonly Slip[], silent: boolean) => {
  const log = createLog();
  const real = createLog();
  const trueWinner = new Map<string, Side>();
  const owes: Record<"lead" | "second", "nothing" | "missed" | "score"> = {
    lead: "nothing",
    second: "nothing",
  };
  const misses = (lane: "lead" | "second", slip: Slip, i: number) =>
    slip.kind === `${lane}Misses` && i % STRETCH < slip.length && i < truth.length - 1;
  const chart = (lane: "lead" | "second", winner: Side, slip: Slip, i: number) => {
    if (misses(lane, slip, i)) {
      owes[lane] = "missed";
      return;
    }
    const says = owes[lane] === "score" || (owes[lane] === "missed" && !silent);
    if (says) log.write(lane, stated(real.view().score, owes[lane] === "missed"));
    const wrong = slip.kind === `${lane}Wrong` && i % STRETCH === 1;
    trueWinner.set(log.write(lane, pointTo(wrong ? otherSide(winner) : winner)), winner);
    owes[lane] = wrong ? "score" : "nothing";
  };
  truth.forEach((winner, i) => {
    const slip = chosen[Math.floor(i / STRETCH) % chosen.length];
    if (!slip) throw new Error("a slip for every stretch");
    const lanes = slip.secondFirst ? (["second", "lead"] as const) : (["lead", "second"] as const);
    for (const lane of lanes) chart(lane, winner, slip, i);
    real.write("lead", pointTo(winner));
  });
  const secondIsRight = ({ kind, other }: LaneRow): boolean =>
    kind === "laneOnly" || (other !== undefined && trueWinner.get(other.id) === other.point.winner);
  return { log, real, secondIsRight };
};

describe("two people who chart one match", () => {
  const truths = fc.array(fc.constantFrom<Side>("A", "B"), { minLength: 1, maxLength: 46 });
  const runs = { seed: 20261125, numRuns: 300 };

  it("[L23] merged where the second is right, misses and wrong winners give the true match", () => {
    fc.assert(
      fc.property(truths, slips, (truth, chosen) => {
        const { log, real, secondIsRight } = chartTwice(truth, chosen, false);
        const charted = truth.filter((_, i) => {
          const slip = chosen[Math.floor(i / STRETCH) % chosen.length];
          const charted = slip?.kind !== "secondMisses" || i % STRETCH >= slip.length;
          return charted || i === truth.length - 1;
        });
        expect(log.compare().pointCount).toBe(charted.length);
        mergeAll(log, "second", (row) => row.kind !== "same" && secondIsRight(row));
        const { sets, games, points, server } = real.view().score;
        expect(log.view().score).toMatchObject({ sets, games, points, server });
        expect(winners(log.view())).toBe(winners(real.view()));
        expect(log.view().setAside).toEqual([]);
      }),
      runs,
    );
  });

  it("[L23] also where the lead never said that points were missed, if the second saw all", () => {
    const seesAll = slips.map((chosen) =>
      chosen.map((slip): Slip => (slip.kind === "leadMisses" ? slip : { ...slip, kind: "none" })),
    );
    fc.assert(
      fc.property(truths, seesAll, (truth, chosen) => {
        const { log, real } = chartTwice(truth, chosen, true);
        mergeAll(log, "second", ({ kind }) => kind !== "same");
        expect(winners(log.view())).toBe(winners(real.view()));
      }),
      runs,
    );
  });

  it("[L24] comparing is a pure function of the log, and every point of both is in it once", () => {
    fc.assert(
      fc.property(truths, slips, (truth, chosen) => {
        const { log } = chartTwice(truth, chosen, false);
        const comparison = log.compare();
        expect(log.compare()).toEqual(comparison);
        const charted = log.entries.filter(
          ({ laneId, entry }) => laneId === "second" && entry.body.kind === "PointCharted",
        );
        expect(comparison.rows.flatMap(({ other }) => other?.id ?? [])).toEqual(
          charted.map(({ entry }) => entry.id),
        );
        const shown = comparison.rows.flatMap(({ lead }) => lead?.id ?? []);
        expect(new Set(shown).size).toBe(shown.length);
      }),
      runs,
    );
  });
});
