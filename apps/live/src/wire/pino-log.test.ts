import { describe, expect, it } from "vitest";
import { createPinoLog } from "./pino-log.ts";

describe("the log", () => {
  it("[LV27] has ids, positions, an error's kind and place; never its message, which may hold a name or a token", () => {
    const lines: string[] = [];
    const log = createPinoLog("start-1", { write: (line) => void lines.push(line) });
    const error = Object.assign(new Error("duplicate key: (Noor V., token=abc)"), { code: "23505" });
    log.fault("an append failed", { matchId: "m1", pos: 7, error });
    log.note("the database answers again", {});
    const [fault, note] = lines.map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(fault).toMatchObject({
      level: 50,
      process: "live",
      instanceId: "start-1",
      matchId: "m1",
      pos: 7,
      msg: "an append failed",
      error: { kind: "Error", code: "23505" },
    });
    expect(note).toMatchObject({ level: 30, msg: "the database answers again" });
    expect(lines.join("")).not.toMatch(/Noor|token/);
  });
});
