import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

const MAIN = fileURLToPath(new URL("main.ts", import.meta.url));
const VECTORS = readFileSync(new URL("../../shared/vectors/scoring-edge.jsonl", import.meta.url), "utf8");
const FORMAT = {
  sets: 1,
  gamesPerSet: 6,
  tiebreakAt: 6,
  tiebreakTo: 7,
  noAd: false,
  finalSet: { kind: "same" },
};

interface Ran {
  readonly code: number | null;
  readonly lines: readonly string[];
  readonly stderr: string;
}

function run(input: string, ...args: string[]): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [MAIN, ...args]);
    let stdout = "";
    let stderr = "";
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      stdout += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      stderr += text;
    });
    child.on("error", reject);
    child.on("close", (code) => resolve({ code, lines: stdout.split("\n").slice(0, -1), stderr }));
    // A process that ends on a usage error closes its input early; that is what is tested then.
    child.stdin.on("error", () => undefined);
    child.stdin.end(input);
  });
}

const read = (line: string | undefined) => JSON.parse(line ?? "null");
const match = (members: object) => JSON.stringify({ id: "m", format: FORMAT, firstServer: "A", ...members });

describe("[SC41] scoring from the command line", () => {
  it("gives the states of every edge case, and the last as the final one", async () => {
    const { code, lines } = await run(VECTORS, "--all");
    const cases = VECTORS.trimEnd().split("\n").map(read);
    expect(code).toBe(0);
    expect(lines).toHaveLength(cases.length);
    for (const [index, expected] of cases.entries()) {
      const scored = read(lines[index]);
      const last = expected.states.at(-1);
      expect(scored.id).toBe(expected.id);
      expect(scored.states).toStrictEqual(expected.states);
      expect(scored.final).toStrictEqual(last);
      expect(scored.finalScore).toStrictEqual(last.sets);
      expect([scored.winner, scored.status]).toEqual([last.winner, last.status]);
    }
  });

  it("leaves the states out unless asked, and takes points as letters", async () => {
    const { lines } = await run(`${match({ points: "AAAABBBBA" })}\n${match({ points: "A".repeat(24) })}\n`);
    const open = read(lines[0]);
    expect(open).not.toHaveProperty("states");
    expect(open).toMatchObject({ finalScore: [], winner: null, status: "playing" });
    expect(open.unfinished).toEqual({ games: [1, 1], points: [1, 0] });
    const done = read(lines[1]);
    expect(done).toMatchObject({ finalScore: [[6, 0]], winner: "A", status: "completed" });
    expect(done).not.toHaveProperty("unfinished");
  });

  it("says what was under way when a match ended early, and gives the start when nothing happened", async () => {
    const retired = match({
      events: [...Array(4).fill({ type: "point", winner: "B" }), { type: "retire", side: "B" }],
    });
    const { lines } = await run(`${retired}\n${match({ events: [] })}`);
    expect(read(lines[0])).toMatchObject({ winner: "A", status: "retired", unfinished: { games: [0, 1] } });
    expect(read(lines[1])).toMatchObject({ id: "m", status: "playing", final: { call: "0-0", pause: null } });
  });

  it("keeps names of doubles players", async () => {
    const { lines } = await run(match({ points: "AAAA", doublesOrder: ["A1", "B1", "A2", "B2"] }));
    expect(read(lines[0]).final.serverPlayer).toBe("B1");
  });

  it.each([
    ["not json", null, "the line is not JSON"],
    ["[1]", null, "must be a JSON object"],
    [match({}), "m", "events must be a list, or points"],
    [match({ points: "AAb" }), "m", 'letter 3 is "b"'],
    [match({ points: 5 }), "m", "points must be a string"],
    [match({ points: "A", events: [] }), "m", "not both"],
    [match({ events: [{ type: "point" }] }), "m", 'event 1: winner must be "A" or "B"'],
    [match({ points: "A".repeat(25) }), "m", "event 25: the match is over (completed)"],
    [match({ firstServer: "C", points: "A" }), "m", 'firstServer must be "A" or "B"'],
    [match({ doublesOrder: ["A1"], points: "A" }), "m", "four different names"],
    [match({ doublesOrder: "A1", points: "A" }), "m", "list of four names"],
    [match({ format: { ...FORMAT, sets: 4 }, points: "A" }), "m", "sets must be one of 1, 3, 5, not 4"],
    [JSON.stringify({ id: 7, points: "A" }), 7, "format must be an object"],
  ])("answers a bad line with its number and goes on: %s", async (bad, id, error) => {
    const { code, lines } = await run(`\n\r\n${bad}\n\n${match({ points: "A" })}\n`);
    expect(code).toBe(0);
    expect(lines).toHaveLength(2);
    expect(read(lines[0])).toEqual({ id, line: 3, error: expect.stringContaining(error) });
    expect(read(lines[1])).toMatchObject({ id: "m", status: "playing" });
  });

  it("answers nothing with nothing, and reads a last line without an end", async () => {
    expect(await run("")).toMatchObject({ code: 0, lines: [] });
    expect((await run(`\uFEFF${match({ points: "A" })}`)).lines).toHaveLength(1);
  });

  it("streams input that is larger than a pipe holds, in order", async () => {
    const many = Array.from({ length: 3000 }, (_, id) => match({ id, points: "ABBA".repeat(12) })).join("\n");
    const { lines } = await run(many);
    expect(lines.map((line) => read(line).id)).toEqual(Array.from({ length: 3000 }, (_, id) => id));
  });

  it("explains itself, and fails on a word that it does not know only", async () => {
    expect(await run("", "--help")).toMatchObject({ code: 0, stderr: "" });
    const wrong = await run("", "--every");
    expect(wrong.code).toBe(2);
    expect(wrong.stderr).toContain("Usage: node infra/score/main.ts [--all]");
  });
});
