import { describe, expect, it } from "vitest";
import { makeCodeKeeping } from "./code-keeping.ts";
import { makeCodes } from "./codes.ts";
import { granted } from "./testing/granted.ts";
import { createMemoryAuthStore } from "./testing/memory-auth-store.ts";
import { makeMovableClock } from "./testing/movable-clock.ts";

const codesThatDraw = (...drawn: string[]) =>
  makeCodes({
    store: createMemoryAuthStore(),
    keeping: makeCodeKeeping("a secret of the test, long enough to be one"),
    clock: makeMovableClock(0),
    draw: () => drawn.shift() ?? "AAAAAA",
  });
const WALL = { academyId: "a", kind: "wall", dayId: "d", by: "m", expiresMs: 1 } as const;

describe("issuing a code", () => {
  it("[AU11] draws again when the code is in use", async () => {
    const { issueCode } = codesThatDraw("AAAAAA", "AAAAAA", "BBBBBB");
    expect(granted(await issueCode(WALL)).code).toBe("AAAAAA");
    expect(granted(await issueCode(WALL)).code).toBe("BBBBBB");
  });

  it("[AU11] stops at a source that draws the same for ever", async () => {
    const { issueCode } = codesThatDraw();
    await issueCode(WALL);
    await expect(issueCode(WALL)).rejects.toThrow("bug");
  });
});
