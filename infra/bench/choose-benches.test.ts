import { describe, expect, it } from "vitest";
import { BENCH_NAMES, chooseBenches } from "./choose-benches.ts";

describe("which benches run", () => {
  it("[BN1] runs all without a name, and the named ones in their own order", () => {
    expect(chooseBenches([])).toEqual({ ok: true, value: BENCH_NAMES });
    expect(chooseBenches(["drag", "fold", "drag"])).toEqual({ ok: true, value: ["fold", "drag"] });
  });

  it("[BN1] says which there are when it does not know one", () => {
    const chosen = chooseBenches(["drag", "drog"]);
    expect(chosen).toEqual({
      ok: false,
      error:
        'There is no bench called "drog". Name any of fold, pad-script, drag, offline, board, broadcast, or none for all.',
    });
  });
});
