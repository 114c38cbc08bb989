/**
 * Scores matches from standard input, one JSON object a line, to standard output, one line each.
 * `--all` adds the state after every event. A line that cannot be scored is answered with what is wrong.
 */
import { once } from "node:events";
import { createInterface } from "node:readline";
import { parseArgs } from "node:util";
import { scoreRecord } from "./score-record.ts";

const USAGE = `Usage: node infra/score/main.ts [--all] < matches.jsonl

Each line: {"id", "format", "firstServer", "doublesOrder"?, and "events": [...] or "points": "AABA..."}
Writes a line each: {"id", "final", "finalScore", "winner", "status"}, and "unfinished" (games and points)
when a set was under way. --all adds "states", one after each event.
A line that cannot be scored gets {"id", "line", "error"}; the others go on.
`;

const BYTE_ORDER_MARK = /^\uFEFF/;

function readArguments(): { all: boolean; help: boolean } | string {
  try {
    const options = { all: { type: "boolean" }, help: { type: "boolean", short: "h" } } as const;
    const { values } = parseArgs({ options });
    return { all: values.all === true, help: values.help === true };
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

async function scoreInput(withStates: boolean): Promise<void> {
  let line = 0;
  for await (const raw of createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY })) {
    line++;
    const text = raw.replace(BYTE_ORDER_MARK, "").trim();
    if (text === "") continue;
    const isRoomLeft = process.stdout.write(`${JSON.stringify(scoreRecord(text, line, withStates))}\n`);
    if (!isRoomLeft) await once(process.stdout, "drain");
  }
}

/** A reader that has seen enough (`| head`) closes the pipe: that ends the work, and is no failure. */
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit(0);
  throw error;
});

const given = readArguments();
if (typeof given === "string") {
  process.stderr.write(`${given}\n\n${USAGE}`);
  process.exitCode = 2;
} else if (given.help) {
  process.stdout.write(USAGE);
} else {
  await scoreInput(given.all);
}
