import { describe, expect, it } from "vitest";
import { readArguments } from "./arguments.ts";

describe("readArguments", () => {
  it("[ST20] knows --demo", () => {
    expect(readArguments([])).toEqual({ ok: true, value: { demo: false } });
    expect(readArguments(["--demo"])).toEqual({ ok: true, value: { demo: true } });
  });

  it.each(["--dmeo", "demo", "--demo=yes"])("[ST2] answers %s with the usage", (argument) => {
    expect(readArguments([argument])).toMatchObject({
      ok: false,
      error: expect.stringContaining("npm start"),
    });
  });
});
