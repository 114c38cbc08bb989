import { DEFAULT_WATCH_SETTINGS } from "@courtloom/decisions";
import { atMost, type Bar, within } from "../bar.ts";
import type { RunTasks, TasksOf } from "../run-tasks.ts";
import { agrees } from "./agrees.ts";
import type { Condition } from "./condition.ts";
import { conditionResult, type Series } from "./condition-result.ts";
import { type PlannedCondition, planRun } from "./plan-run.ts";
import { REFERENCE } from "./reference.ts";
import type { ClearingOutcome } from "./simulate-clearing.ts";
import type { PlayerOutcome } from "./simulate-player.ts";

/** Furthest that what is found may be from the reference, in points per hundred. SPEC OP3. */
const POINTS = 3;
/** Largest share of alerts that ease and are raised again within fifteen attempts. SPEC OP6. */
const FLICKER = 0.04;
const CLEARING_RATES = [0.15, 0.25, 0.35];
const PLAYERS_PER_TASK = 10;

/** Every figure of a run and the bars it is held against. */
export interface OperatingFigures {
  readonly conditions: readonly { readonly planned: PlannedCondition; readonly series: readonly Series[] }[];
  readonly clearing: readonly ClearingOutcome[];
  readonly bars: readonly Bar[];
}

const tasksOf = (seed: number, { condition, players, matchesEach }: PlannedCondition): TasksOf<"players"> =>
  Array.from({ length: Math.ceil(players / PLAYERS_PER_TASK) }, (_, i) => {
    const first = i * PLAYERS_PER_TASK;
    const count = Math.min(PLAYERS_PER_TASK, players - first);
    return { kind: "players", seed, condition, first, count, matchesEach } as const;
  });

const runConditions = async (seed: number, plan: readonly PlannedCondition[], run: RunTasks) => {
  const parts = plan.map((planned) => ({ planned, tasks: tasksOf(seed, planned) }));
  const outcomes = await run<"players">(
    parts.flatMap(({ tasks }) => tasks),
    "players, in tens",
  );
  let from = 0;
  return parts.map(({ planned, tasks }) => {
    const own: readonly PlayerOutcome[] = outcomes.slice(from, from + tasks.length).flat();
    from += tasks.length;
    return { planned, series: conditionResult(planned, own) };
  });
};

const words = ({ past, watches, attempts }: Condition): string => {
  const many = watches === 1 ? "" : `, ${watches} watches a player`;
  return `${past} past matches${many}${attempts === "own" ? ", matches and horizon as the past has them" : ""}`;
};

const barsOf = ({ condition }: PlannedCondition, series: readonly Series[]): readonly Bar[] =>
  series.flatMap(({ oddsRatio, raised, exact, ownSe }) => {
    const what = words(condition);
    if (oddsRatio > 1) {
      const wanted = REFERENCE[condition.past].found[oddsRatio - 2] ?? Number.NaN;
      return [within(`${what}: found at ${oddsRatio} times the odds`, raised.mean, wanted, POINTS)];
    }
    const falsely = atMost(`${what}: false alarms in a player-match`, raised, DEFAULT_WATCH_SETTINGS.alpha);
    return exact ? [falsely, agrees(what, raised.mean, exact.mean, ownSe)] : [falsely];
  });

const pastOf = ({ planned }: OperatingFigures["conditions"][number]): number => planned.condition.past;

/**
 * Simulates at least `matches` matches of every series; the same seed gives the same figures, however many threads
 * there are. SPEC OP1 to OP6.
 */
export const runOperating = async (
  { seed, matches }: { readonly seed: number; readonly matches: number },
  run: RunTasks,
): Promise<OperatingFigures> => {
  const conditions = await runConditions(seed, planRun(matches), run);
  const clearing = await run<"clearing">(
    CLEARING_RATES.map(
      (rate) => ({ kind: "clearing", seed, rate, matches: Math.ceil(matches / 2) }) as const,
    ),
    "usual rates, how alerts ease",
  );
  const flicker = clearing.map(({ rate, again, matches: n }) =>
    atMost(
      `usual rate ${rate}: raised again within 15 attempts`,
      { mean: again, se: Math.sqrt((again * (1 - again)) / n) },
      FLICKER,
    ),
  );
  const sorted = [...conditions].sort((one, other) => pastOf(one) - pastOf(other));
  return {
    conditions,
    clearing,
    bars: [...sorted.flatMap(({ planned, series }) => barsOf(planned, series)), ...flicker],
  };
};
