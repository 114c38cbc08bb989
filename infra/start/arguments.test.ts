import { describe, expect, it } from "vitest";
import { readArguments } from "./arguments.ts";

describe("readArguments", () => {
  it("[ST20] knows --demo", () => {
    expect(readArguments([])).toEqual({ ok: true, value: { demo: false, https: false } });
    expect(readArguments(["--demo"])).toEqual({ ok: true, value: { demo: true, https: false } });
  });

  it("[ST23] knows --https, also beside --demo", () => {
    expect(readArguments(["--https"])).toEqual({ ok: true, value: { demo: false, https: true } });
    expect(readArguments(["--demo", "--https"])).toEqual({ ok: true, value: { demo: true, https: true } });
  });

  it.each(["--dmeo", "demo", "--demo=yes"])("[ST2] answers %s with the usage", (argument) => {
    expect(readArguments([argument])).toMatchObject({
      ok: false,
      error: expect.stringContaining("npm start"),
    });
  });
});
