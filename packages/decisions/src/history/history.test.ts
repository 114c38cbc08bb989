import { DEFAULT_SPREAD, worthBySituation } from "@courtloom/stats";
import { describe, expect, it } from "vitest";
import { figuresOf } from "../figures/figures-of.ts";
import { FIGURE_NAMES } from "../figures/registry.ts";
import { STARTER_PLAN } from "../plan/starter-plan.ts";
import { talliesOf } from "../tally/tallies-of.ts";
import { EMPTY_TALLY, type Tally } from "../tally/tally.ts";
import { every, matchWith } from "../testing/match-with.ts";
import { paperMatch } from "../testing/paper-match.ts";
import { PAPER_CELLS, PAPER_FIGURES } from "../testing/paper-tally.ts";
import { fitAcademy, readAcademyFit } from "./academy-fit.ts";
import { behindFigure } from "./behind-figure.ts";
import { type ChoiceBall, choiceBalls } from "./choice-balls.ts";
import { costOfChoices } from "./choice-cost.ts";
import { CHOICE_SITUATIONS, choiceSituationAt } from "./choice-situation.ts";
import { historyFigure } from "./history-figure.ts";
import { lineSpots } from "./line-spots.ts";
import { opponentLevelOf } from "./opponent-level.ts";
import { pickMatch } from "./picked-match.ts";
import { planAimAt } from "./plan-aim.ts";
import { fitPlayer } from "./player-fit.ts";
import { importancesOf, pointSizeNow, pointSizes } from "./point-sizes.ts";
import { serveBefore } from "./serve-before.ts";
import { wonByChoice } from "./won-by-choice.ts";

const paper = matchWith(paperMatch());
const figures = figuresOf(paper).A;
const tally = talliesOf(paper).A;
if (!figures || !tally) throw new Error("side A is charted");

/** A tally of so many kept and line balls behind the baseline from the right, of points won and lost. */
const tallyOf = (
  kept: readonly [won: number, lost: number],
  line: readonly [won: number, lost: number],
): Tally => {
  const cell = ([won, lost]: readonly [number, number]) => [won + lost, 0, won, lost, won + lost, 0] as const;
  const cells = { BRmc: cell(kept), BRml: cell(line) };
  return { version: 2, levels: { every: { counts: {}, cells } } };
};
const ball = (over: Partial<ChoiceBall>, i: number): ChoiceBall => ({
  pointId: `p${i}`,
  at: i,
  situation: choiceSituationAt("behindBaseline", "right", "mid") ?? -1,
  choice: over.isLine ? "line" : "cross",
  isLine: false,
  won: true,
  offPlan: undefined,
  ...over,
});
/** So many balls of points won and lost, each of a point of its own. */
const balls = (isLine: boolean, won: number, lost: number, offPlan?: boolean): ChoiceBall[] =>
  Array.from({ length: won + lost }, (_, i) =>
    ball({ isLine, won: i < won, offPlan }, (isLine ? 1000 : 0) + i),
  );

describe("figures over matches", () => {
  it.each(FIGURE_NAMES)(
    "[HF1] %s is the sum of any parting of the points, and what the hand found",
    (name) => {
      const whole = historyFigure([pickMatch(paper, figures, () => true)], name);
      const [x, n] = PAPER_FIGURES[name];
      expect(whole).toMatchObject({ x, n });
      const thirds = [0, 1, 2].map((rest) => pickMatch(paper, figures, ({ pos }) => pos % 3 === rest));
      expect(historyFigure(thirds, name)).toMatchObject({ x, n, levels: whole.levels, parts: whole.parts });
      const each = thirds.map((part) => historyFigure([part], name));
      expect(each.reduce((sum, part) => sum + part.n, 0)).toBe(n);
      expect(historyFigure(thirds, name).matches).toBe(each.filter((part) => part.n > 0).length);
    },
  );

  it.each(FIGURE_NAMES)(
    "[HF9] %s has behind it as many attempts as it counts, of the same points",
    (name) => {
      const behind = behindFigure(paper, "A", name);
      const of = (hit: boolean) => behind.filter((each) => each.hit === hit).map(({ pointId }) => pointId);
      expect([of(true).sort(), of(false).sort()]).toEqual([
        figures[name].hits.toSorted(),
        figures[name].others.toSorted(),
      ]);
    },
  );

  it("[HF3] know an opponent by the levels frozen, 1 the strongest", () => {
    const { opened } = paper;
    const levelOf = (own: number | undefined, other: number | undefined) => {
      const player = (side: "A" | "B", level: number | undefined) => ({
        ...opened.players[side],
        ...(level === undefined ? {} : { level }),
      });
      return opponentLevelOf({ players: { A: player("A", own), B: player("B", other) } }, "A");
    };
    expect([
      levelOf(3, 4),
      levelOf(3, 1),
      levelOf(3, 5),
      levelOf(3, undefined),
      levelOf(undefined, 3),
    ]).toEqual(["similar", "stronger", "weaker", "notKnown", "notKnown"]);
  });
});

describe("choices between the line and keeping the ball", () => {
  it("[HF11] of the paper match are the hand's cells, situation by situation", () => {
    expect(CHOICE_SITUATIONS).toHaveLength(24);
    const counted = wonByChoice(tally);
    const sum = (keys: readonly string[]) =>
      keys.reduce(
        (at, key) => {
          const [, , won = 0, lost = 0] = PAPER_CELLS.every[key] ?? [];
          return { won: at.won + won, n: at.n + won + lost };
        },
        { won: 0, n: 0 },
      );
    const at = (...situation: Parameters<typeof choiceSituationAt>) =>
      counted[choiceSituationAt(...situation) ?? -1];
    expect(at("behindBaseline", "right", "mid")).toEqual([sum(["BRmc", "BRmk", "BRmm"]), sum(["BRml"])]);
    expect(at("insideServiceLine", "left", "short")).toEqual([sum(["SLsc"]), { won: 0, n: 0 }]);
    expect(choiceSituationAt("behindBaseline", "middle", "mid")).toBeUndefined();
    const own = choiceBalls(paper, "A").filter(({ won }) => won !== undefined);
    const all = counted.reduce((n, [kept, line]) => n + kept.n + line.n, 0);
    expect(own).toHaveLength(all);
    expect(fitPlayer(fitAcademy([]), own).fit.counts).toEqual(counted);
  });

  it("[HF12] an academy's fit counts its players and matches, and is read back as it was kept", () => {
    const fit = fitAcademy([
      { playerId: "p", tally: tallyOf([30, 20], [5, 9]) },
      { playerId: "p", tally },
      { playerId: "q", tally: EMPTY_TALLY },
    ]);
    expect(fit).toMatchObject({ players: 1, matches: 2, ownSpread: false, spread: DEFAULT_SPREAD });
    expect(readAcademyFit(JSON.parse(JSON.stringify(fit)))).toEqual({ ok: true, value: fit });
    for (const wrong of [
      null,
      {},
      { ...fit, spread: { player: -1, situation: 1, choice: 1 } },
      { ...fit, academy: 4 },
    ])
      expect(readAcademyFit(wrong)).toEqual({ ok: false, error: "not_fit" });
  });

  it("[HF13] a place's worth is the fit's, line less kept, wider where several balls share a point", () => {
    const academy = fitAcademy([{ playerId: "p", tally: tallyOf([300, 300], [100, 100]) }]);
    const own = [...balls(false, 40, 40), ...balls(true, 20, 5)];
    const spot = lineSpots(academy, own, null).find(
      ({ depth, side }) => depth === "behindBaseline" && side === "right",
    );
    const place = choiceSituationAt("behindBaseline", "right", "mid") ?? -1;
    const worth = worthBySituation(fitPlayer(academy, own).fit)[place]?.difference;
    expect(spot?.worth?.value).toBeCloseTo(-(worth?.value ?? 0), 12);
    expect(spot?.worth?.low).toBeCloseTo(-(worth?.high ?? 0), 12);
    expect(spot).toMatchObject({ line: { x: 20, n: 25 }, kept: { x: 40, n: 80 }, cross: { x: 40, n: 80 } });
    const shared = own.map((each, i) => ({ ...each, pointId: `p${Math.floor(i / 2)}` }));
    const wider = lineSpots(academy, shared, null).find(
      ({ depth, side }) => depth === spot?.depth && side === "right",
    );
    const width = (at: typeof spot) => (at?.worth ? at.worth.high - at.worth.low : Number.NaN);
    expect(width(wider) / width(spot)).toBeCloseTo(Math.sqrt(105 / 53), 6);
  });

  it("[HF13, HF15] says pays or costs only of enough of both, and where the plan says otherwise", () => {
    const keep = { rules: STARTER_PLAN };
    const pays = fitAcademy([{ playerId: "p", tally: tallyOf([300, 700], [700, 300]) }]);
    const costs = fitAcademy([{ playerId: "p", tally: tallyOf([700, 300], [300, 700]) }]);
    const at = (academy: typeof pays, own: readonly ChoiceBall[], plan: Parameters<typeof lineSpots>[2]) => {
      const spot = lineSpots(academy, own, plan)[1];
      return [spot?.verdict, spot?.plan, spot?.contradicts];
    };
    const many = [...balls(false, 20, 40), ...balls(true, 40, 20, true)];
    const few = [...balls(false, 20, 40), ...balls(true, 4, 0)];
    expect(at(pays, many, keep)).toEqual(["pays", "keep", "keepButLinePays"]);
    expect(at(pays, few, keep)).toEqual(["cantTell", "keep", null]);
    const lost = [...balls(false, 40, 20), ...balls(true, 20, 40)];
    expect(at(costs, lost, keep)).toEqual(["costs", "keep", null]);
    const straight = { rules: [{ id: "s", when: {}, aim: "straight", lineOn: [], targets: [] } as const] };
    expect(at(costs, lost, straight)).toEqual(["costs", "straight", "lineButKeptPays"]);
    expect(at(pays, [], keep)).toEqual(["cantTell", "keep", null]);
    expect(lineSpots(pays, many, keep)[1]?.lineOffPlan).toEqual({ x: 60, n: 60 });
  });

  it("[HF14] a plan's aim in a place is said where it hangs on the place alone", () => {
    const starter = { rules: STARTER_PLAN };
    expect(planAimAt(starter, { depth: "behindBaseline", side: "left" })).toBe("keep");
    expect(planAimAt(starter, { depth: "insideServiceLine", side: "left" })).toBe("depends");
    expect(planAimAt(starter, { depth: "insideServiceLine", side: "left", ballHeight: "low" })).toBe(
      "straight",
    );
    expect(planAimAt(null, { depth: "behindBaseline" })).toBeUndefined();
  });

  it("[HF16] choices off the plan cost what the other choice was worth, in points and by what rested on them", () => {
    const academy = fitAcademy([{ playerId: "p", tally: tallyOf([700, 300], [300, 700]) }]);
    const weighed = (own: readonly ChoiceBall[]) => own.map((each) => ({ ...each, importance: 0.1 }));
    const off = weighed([...balls(false, 40, 20, false), ...balls(true, 20, 40, true)]);
    const cost = costOfChoices(academy, off);
    const worth = lineSpots(academy, off, null)[1]?.worth;
    expect(cost).toMatchObject({ offPlan: 60, judged: 120 });
    expect(cost.points?.value).toBeCloseTo(-60 * (worth?.value ?? 0), 9);
    expect(cost.points?.distinguishable).toBe(true);
    expect(cost.matchChances?.value).toBeCloseTo((cost.points?.value ?? 0) / 10, 9);
    expect(costOfChoices(academy, weighed(balls(false, 9, 9, false)))).toMatchObject({
      offPlan: 0,
      points: null,
    });
    expect(costOfChoices(undefined, off)).toMatchObject({ offPlan: 60, points: null, matchChances: null });
  });
});

describe("the size of a point", () => {
  it("[HF17] is a rank among the match's points, by how much of the match rested on each", () => {
    const importances = importancesOf(paper);
    const sizes = pointSizes(importances);
    expect(sizes).toHaveLength(60);
    expect(Math.min(...sizes.map(({ rank }) => rank))).toBe(1);
    const biggest = importances.indexOf(Math.max(...importances));
    expect(sizes[biggest]).toMatchObject({ rank: 1, of: 60, step: "top5" });
  });

  it("[HF18] begins from the academy's share on serve, else from the default, and says which", () => {
    expect(serveBefore(undefined)).toEqual({ before: 0.55, source: "default" });
    const served = (x: number, n: number): Tally => ({
      version: 2,
      levels: { score: { counts: { wonOnFirst: [x, n], wonOnSecond: [10, 50] }, cells: {} } },
    });
    expect(serveBefore(fitAcademy([{ playerId: "p", tally: served(20, 40) }]))).toMatchObject({
      source: "default",
    });
    expect(serveBefore(fitAcademy([{ playerId: "p", tally: served(50, 70) }]))).toEqual({
      before: 0.5,
      source: "academy",
    });
  });

  it("[HF19] now is a rank among the points so far and itself; none after the end", () => {
    const fresh = matchWith([]);
    expect(pointSizeNow(fresh)).toMatchObject({ rank: 1, of: 1, step: null, source: "default" });
    const points = (letters: string) => matchWith([...letters].map((side) => every(side as "A" | "B", [])));
    const levelAt40 = points("AAABBB");
    expect(pointSizeNow(levelAt40)).toMatchObject({ rank: 1, of: 7 });
    const easy = points(`${"AAABBBAA"}BBB`);
    expect(pointSizeNow(easy)?.of).toBe(12);
    expect(pointSizeNow(points("AAAA".repeat(12)))).toBeUndefined();
  });
});
