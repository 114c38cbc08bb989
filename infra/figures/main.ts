// Simulates the product's own watches and fit where the truth is known; the same seed prints the same figures.
//   node infra/figures/main.ts --operating [--matches 20000] [--seed 1]
//   node infra/figures/main.ts --recovery [--academies 40] [--seed 1]
import process from "node:process";
import { type Asked, parseArguments, USAGE } from "./arguments.ts";
import { type Bar, barLine, ERROR_WORDS } from "./bar.ts";
import { inThreads } from "./in-threads.ts";
import { operatingTable } from "./operating/operating-table.ts";
import { runOperating } from "./operating/run-operating.ts";
import { createProgress } from "./progress.ts";
import { recoveryTable } from "./recovery/recovery-table.ts";
import { runRecovery } from "./recovery/run-recovery.ts";

const run = inThreads(createProgress);

/** Prints the table and each bar; exit code 1 when one was missed. */
const say = (heading: string, table: readonly string[], bars: readonly Bar[]): void => {
  const missed = bars.filter(({ kept }) => !kept).length;
  const closing = missed === 0 ? "every bar kept" : `${missed} of ${bars.length} bars missed`;
  for (const line of [heading, ...table, "", ...bars.map(barLine), `figures: ${closing}`]) console.log(line);
  process.exitCode = missed === 0 ? 0 : 1;
};

const answer = async (asked: Asked): Promise<void> => {
  switch (asked.kind) {
    case "help":
      for (const line of USAGE) console.log(line);
      return;
    case "operating": {
      const figures = await runOperating(asked, run);
      say(`Watches, seed ${asked.seed}`, [...operatingTable(figures), "", ERROR_WORDS], figures.bars);
      return;
    }
    case "recovery": {
      const figures = await runRecovery(asked, run);
      const heading = `What choices are worth, seed ${asked.seed}: ${asked.academies} academies of 60 players and 6 situations; points of a hundred`;
      say(heading, recoveryTable(figures), figures.bars);
    }
  }
};

const asked = parseArguments(process.argv.slice(2));
if (asked.ok) await answer(asked.value);
else {
  console.error(asked.error);
  process.exitCode = 2;
}
