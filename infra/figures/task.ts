import { closeMatch, oneGame } from "./operating/charted-match.ts";
import type { Condition } from "./operating/condition.ts";
import { type ClearingOutcome, simulateClearing } from "./operating/simulate-clearing.ts";
import { type PlayerOutcome, simulatePlayer } from "./operating/simulate-player.ts";
import { createFreezeOnce } from "./operating/watched-player.ts";
import { type AcademyOutcome, recoverAcademy } from "./recovery/recover-academy.ts";

/** A piece of work that a thread does by itself; plain data, the same outcome wherever it is done. */
export type Task =
  | {
      readonly kind: "players";
      readonly seed: number;
      readonly condition: Condition;
      readonly first: number;
      readonly count: number;
      readonly matchesEach: number;
    }
  | { readonly kind: "clearing"; readonly seed: number; readonly rate: number; readonly matches: number }
  | { readonly kind: "academy"; readonly seed: number; readonly academy: number };

export interface OutcomeOf {
  readonly players: readonly PlayerOutcome[];
  readonly clearing: ClearingOutcome;
  readonly academy: AcademyOutcome;
}

/** Does tasks one after the other, keeping what they share. */
export const createTaskRunner = (): (<K extends Task["kind"]>(
  task: Extract<Task, { kind: K }>,
) => OutcomeOf[K]) => {
  const stage = { view: closeMatch(), freeze: createFreezeOnce() };
  const view = oneGame();
  const runs: { readonly [K in Task["kind"]]: (task: Extract<Task, { kind: K }>) => OutcomeOf[K] } = {
    players: ({ condition, seed, first, count, matchesEach }) =>
      Array.from({ length: count }, (_, i) =>
        simulatePlayer(condition, { seed, player: first + i, matches: matchesEach }, stage),
      ),
    clearing: (task) => simulateClearing(task.rate, task, view),
    academy: ({ seed, academy }) => recoverAcademy(seed, academy),
  };
  return (task) => runs[task.kind](task);
};
