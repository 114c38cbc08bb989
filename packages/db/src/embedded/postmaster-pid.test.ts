import { describe, expect, it } from "vitest";
import { parsePostmasterPid } from "./postmaster-pid.ts";

const READY = "4711\n/srv/data/postgres\n1764000000\n25318\n\n127.0.0.1\n  1234567         9\nready   \n";

describe("parsePostmasterPid", () => {
  it("[ST5] reads process, folder, port and readiness", () => {
    expect(parsePostmasterPid(READY)).toEqual({
      pid: 4711,
      dataDir: "/srv/data/postgres",
      port: 25_318,
      ready: true,
    });
  });

  it("[ST5] tells a server that is still starting from a ready one", () => {
    expect(parsePostmasterPid(READY.replace("ready", "starting"))?.ready).toBe(false);
  });

  it("[ST5] takes a file that is only half written", () => {
    expect(parsePostmasterPid("4711\n/srv/data")).toEqual({
      pid: 4711,
      dataDir: "/srv/data",
      port: undefined,
      ready: false,
    });
  });

  it.each(["", "\n", "abc\n/srv", "-5\n/srv", "1\n/srv", "1.5\n"])("[ST5] finds no process in %j", (text) => {
    expect(parsePostmasterPid(text)).toBeUndefined();
  });
});
