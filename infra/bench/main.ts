import { benchBoard } from "./board.ts";
import { benchBroadcast } from "./broadcast.ts";
import { type BenchName, chooseBenches } from "./choose-benches.ts";
import { compare } from "./compare.ts";
import { benchDrag } from "./drag.ts";
import { foldAgainstParse } from "./fold.ts";
import { benchOffline } from "./offline.ts";
import type { Bench, Outcome } from "./outcome.ts";
import { benchPadScript } from "./pad-script.ts";

const BENCHES: Record<BenchName, Bench> = {
  fold: async () => [compare(foldAgainstParse())],
  "pad-script": benchPadScript,
  drag: benchDrag,
  offline: benchOffline,
  board: benchBoard,
  broadcast: benchBroadcast,
};

const PASSES: readonly Outcome["verdict"][] = ["kept", "printed"];

const CLOSING_WORDS = {
  kept: "kept",
  missed: "missed its bar",
  printed: "measured",
  noisy: "too noisy to judge",
  impossible: "could not be measured",
} as const satisfies Record<Outcome["verdict"], string>;

/** Measures each bar against its floor in the same run. Ratios decide the exit code; absolute figures are only printed. */
const run = async (names: readonly BenchName[]): Promise<void> => {
  const outcomes: Outcome[] = [];
  for (const name of names) outcomes.push(...(await BENCHES[name]()));
  const others = outcomes.filter(({ verdict }) => !PASSES.includes(verdict));
  const words = others.map(({ name, verdict }) => `${name} ${CLOSING_WORDS[verdict]}`);
  console.log(others.length === 0 ? "bench: every bar kept" : `bench: ${words.join("; ")}`);
  process.exitCode = others.length === 0 ? 0 : 1;
};

const chosen = chooseBenches(process.argv.slice(2));
if (chosen.ok) await run(chosen.value);
else {
  console.error(chosen.error);
  process.exitCode = 2;
}
