import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clearLevel, NO_EVIDENCE, sinceAttempt, stepCusum } from "./cusum.ts";
import { cusumPath } from "./cusum-path.ts";
import { cusumScores } from "./cusum-scores.ts";

interface TraceCase {
  readonly id: string;
  readonly input: {
    readonly kind: "trace";
    readonly p0: number;
    readonly R: number;
    readonly x: readonly number[];
  };
  readonly expected: { readonly u: number; readonly d: number; readonly path: readonly number[] };
}
interface StateCase {
  readonly id: string;
  readonly input: {
    readonly kind: "state_machine";
    readonly u: number;
    readonly d: number;
    readonly H: number;
    readonly clear_at_or_below: number;
    readonly x: readonly number[];
  };
  readonly expected: {
    readonly path: readonly number[];
    readonly events: readonly (readonly ["raise" | "clear", number])[];
    readonly active: boolean;
  };
}

const read = <T>(file: string): readonly T[] =>
  (
    JSON.parse(readFileSync(new URL(`../../../shared/vectors/${file}.json`, import.meta.url), "utf8")) as {
      cases: T[];
    }
  ).cases;
const traces = read<TraceCase>("bernoulli-cusum").filter((c) => c.input.kind === "trace");
const machines = read<StateCase>("alert-state").filter((c) => c.input.kind === "state_machine");

const attemptsOf = (x: readonly number[], up: number, down: number, threshold: number) =>
  x.map((e) => ({ event: e === 1, scores: { up, down }, threshold }));

describe("evidence that a rate is worse than usual", () => {
  it("has every case of the scores and of the states", () =>
    expect([traces.length, machines.length]).toEqual([2, 11]));

  it.each(traces)("[S10, S11] $id: scores and path", ({ input, expected }) => {
    const scores = cusumScores(input.p0, input.R);
    expect(scores).toEqual({ up: expected.u, down: expected.d });
    const path = cusumPath(attemptsOf(input.x, scores.up, scores.down, Number.MAX_SAFE_INTEGER));
    expect(path.states.map((s) => s.c)).toEqual(expected.path);
  });

  it.each(machines)("[S11, S12] $id: path, raises, clears", ({ input, expected }) => {
    const { states, turns } = cusumPath(attemptsOf(input.x, input.u, input.d, input.H));
    expect(clearLevel(input.H)).toBe(input.clear_at_or_below);
    expect(states.map((s) => s.c)).toEqual(expected.path);
    const named = turns.map(({ attempt, change }) => [change === "raised" ? "raise" : "clear", attempt]);
    expect(named).toEqual(expected.events);
    expect(states.at(-1)?.alerting ?? false).toBe(expected.active);
  });

  it("[S13] says since which attempt, and how many of how many", () => {
    const { states } = cusumPath(attemptsOf([1, 0, 0, 0, 1, 1, 0, 1], 60, 32, 400));
    // 60, 28, 0, 0, 60, 120, 88, 148
    const last = states.at(-1) ?? NO_EVIDENCE;
    expect(sinceAttempt(last)).toBe(5);
    expect([last.runEvents, last.runAttempts]).toEqual([3, 4]);
    expect(sinceAttempt(states[3] ?? NO_EVIDENCE)).toBeUndefined();
    expect(sinceAttempt(NO_EVIDENCE)).toBeUndefined();
  });

  it("[S10] counts an attempt by the usual rate of its own situation", () => {
    const rare = cusumScores(0.1);
    const common = cusumScores(0.5);
    const { states } = cusumPath([
      { event: true, scores: rare, threshold: 900 },
      { event: true, scores: common, threshold: 900 },
    ]);
    expect(states.map((s) => s.c)).toEqual([rare.up, rare.up + common.up]);
    expect(rare.up).toBeGreaterThan(common.up);
  });

  it("[S11, S12] replayed from the list is what it was step by step, within its bounds", () => {
    const attempt = fc.record({
      event: fc.boolean(),
      scores: fc.double({ min: 0.02, max: 0.9, noNaN: true }).map((p) => cusumScores(p)),
    });
    const thresholds = fc.tuple(fc.integer({ min: 60, max: 400 }), fc.nat({ max: 300 }));
    fc.assert(
      fc.property(fc.array(attempt, { maxLength: 60 }), thresholds, (list, [first, more]) => {
        const rising = list.map((a, i) => ({ ...a, threshold: i < 20 ? first : first + more }));
        let state = NO_EVIDENCE;
        const turns: string[] = [];
        for (const a of rising) {
          const step = stepCusum(state, a.event, a.scores, a.threshold);
          expect(step.state.c).toBeGreaterThanOrEqual(0);
          expect(step.state.c).toBeLessThanOrEqual(a.threshold);
          state = step.state;
          if (step.change !== "none") turns.push(step.change);
        }
        const path = cusumPath(rising);
        expect(path.states.at(-1) ?? NO_EVIDENCE).toEqual(state);
        expect(path.turns.map((t) => t.change)).toEqual(turns);
        // Raises and clears take turns, beginning with a raise.
        expect(turns.every((t, i) => t === (i % 2 === 0 ? "raised" : "cleared"))).toBe(true);
      }),
      { seed: 20261125 },
    );
  });
});
