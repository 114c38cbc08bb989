import { foldLog } from "@courtloom/match-log";
import { makeLog, openedWith } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { levelIn, levelsFor } from "./lane-level.ts";
import { parseSettings, USUAL_SETTINGS } from "./pad-settings.ts";

const viewOf = (changes: Parameters<typeof openedWith>[0]) => {
  const view = foldLog(makeLog([], openedWith(changes)));
  if (!view.ok) throw new Error(view.error);
  return view.value;
};

describe("levels", () => {
  it("[PD23] key balls unless the phone remembers another", () => {
    expect(USUAL_SETTINGS.level).toBe("key");
    expect(parseSettings('{"level":"every"}').level).toBe("every");
    expect(parseSettings('{"level":"all"}').level).toBe("key");
  });

  it("[PD23] doubles are charted for the score only, and a match without a charted player has no key balls", () => {
    const singles = viewOf({});
    expect(levelsFor(singles)).toEqual(["score", "key", "every"]);
    expect([levelIn(singles, "key"), levelIn(undefined, "key")]).toEqual(["key", "key"]);
    const doubles = viewOf({ doubles: true, subjects: [] });
    expect((["score", "key", "every"] as const).map((wanted) => levelIn(doubles, wanted))).toEqual([
      "score",
      "score",
      "score",
    ]);
    const nobody = viewOf({ subjects: [] });
    expect((["key", "every"] as const).map((wanted) => levelIn(nobody, wanted))).toEqual(["score", "every"]);
  });
});
