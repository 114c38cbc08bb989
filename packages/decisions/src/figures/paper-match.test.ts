import { readFileSync } from "node:fs";
import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import { idAt } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { talliesOf } from "../tally/tallies-of.ts";
import { tallyCount } from "../tally/tally-count.ts";
import { matchWith } from "../testing/match-with.ts";
import { PAPER_SHEET, paperMatch } from "../testing/paper-match.ts";
import { PAPER_CELLS, PAPER_FIGURES, PAPER_PARTS, PAPER_TARGETS } from "../testing/paper-tally.ts";
import { figuresOf } from "./figures-of.ts";
import { FIGURE_NAMES } from "./registry.ts";

const view = matchWith(paperMatch());
const figures = figuresOf(view).A;
const tally = talliesOf(view).A;

describe("sixty points tallied by hand", () => {
  it("[D42] are played as the sheet says", () => {
    expect(PAPER_SHEET.length).toBe(60);
    expect(view.setAside).toEqual([]);
    expect(view.score).toMatchObject({ sets: [[6, 3]], games: [0, 1], points: [2, 1], server: "A" });
  });

  it.each(FIGURE_NAMES)("[D42] %s is what the hand found, live and in the tally", (name) => {
    const [x, n] = PAPER_FIGURES[name];
    expect(figures?.[name]).toMatchObject({ x, n });
    expect(figures?.[name].hits.length).toBe(x);
    expect(figures?.[name].others.length).toBe(n - x);
    expect(tally && tallyCount(tally, name)).toEqual({ x, n });
  });

  it("[D42] parts, targets and cells are too", () => {
    for (const name of FIGURE_NAMES) {
      const counts = Object.entries(figures?.parts[name] ?? {}).map(([part, { x, n }]) => [part, [x, n]]);
      expect([name, Object.fromEntries(counts)]).toEqual([name, PAPER_PARTS[name] ?? {}]);
    }
    expect(figures?.targets.map(({ ruleId, count: { x, n } }) => [ruleId, x, n])).toEqual(PAPER_TARGETS);
    expect(tally?.levels.key?.cells).toEqual(PAPER_CELLS.key);
    expect(tally?.levels.every?.cells).toEqual(PAPER_CELLS.every);
  });

  it("[D42] open the points that they stand on", () => {
    expect(figures?.lineMissedOffPlan.hits).toEqual([2, 19, 24, 32, 42, 60].map((n) => idAt(n + 1)));
  });

  it("[D6, D42] the log as it was stored then still tells the same", () => {
    const golden: { readonly log: readonly LoggedEntry[]; readonly tally: unknown } = JSON.parse(
      readFileSync(new URL("../../../../shared/matches/sixty-points.json", import.meta.url), "utf8"),
    );
    const folded = foldLog(golden.log);
    expect(folded.ok && talliesOf(folded.value)).toEqual({ A: golden.tally });
    expect(golden.tally).toEqual(tally);
  });
});
