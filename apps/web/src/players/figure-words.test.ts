import { FIGURE_NAMES, unitOf } from "@courtloom/decisions";
import { describe, expect, it } from "vitest";
import { FIGURE_GROUPS } from "./figure-groups.ts";
import { readFigureKey, writeFigureKey } from "./figure-key.ts";
import { FIGURE_WORDS } from "./figure-words.ts";
import { orderedParts, partWords } from "./part-words.ts";
import { sixtyPoints } from "./testing/sixty-points.ts";

const UNIT_WORDS = { balls: /\bballs\b/, points: /\bpoints\b/, moments: /\bmoments\b/ };

describe("words of figures", () => {
  it("[PF1] every figure stands in one group", () => {
    const shown = FIGURE_GROUPS.flatMap(({ figures }) => figures);
    expect([...shown].sort()).toEqual([...FIGURE_NAMES].sort());
  });

  it.each(FIGURE_NAMES)(
    "[PF2] %s says whether it counts balls, points or moments, and none of the others",
    (name) => {
      const { counted } = FIGURE_WORDS[name];
      const named = Object.entries(UNIT_WORDS).filter(([, word]) =>
        word.test(counted.split(" with ")[0] ?? ""),
      );
      expect(named.map(([unit]) => unit)).toEqual([unitOf(name)]);
    },
  );

  it("[PF2] every part of a match charted at all levels has words of its own", () => {
    const { parts } = sixtyPoints();
    for (const name of FIGURE_NAMES) {
      const words = Object.keys(parts[name] ?? {}).map((part) => partWords(name, part));
      expect(new Set(words).size).toBe(words.length);
      for (const said of words) expect(said).toMatch(/^[A-Z0-9][a-z0-9 ,-]+$/);
    }
    expect(partWords("lineMissed", "behindBaseline.left")).toBe("Behind the baseline, left side");
    expect(partWords("shortLowWon", "right.middle.in")).toBe("Right side, to the middle, came in");
    expect(partWords("builtUp", "5+")).toBe("5 balls or more kept before");
  });

  it("[PF2] parts keep their order: by place, side and length", () => {
    expect(orderedParts(["long", "opening", "building"])).toEqual(["opening", "building", "long"]);
    expect(orderedParts(["5+", "2", "0"])).toEqual(["0", "2", "5+"]);
    expect(orderedParts(["insideBaseline.right", "behindBaseline.right", "behindBaseline.left"])).toEqual([
      "behindBaseline.left",
      "behindBaseline.right",
      "insideBaseline.right",
    ]);
  });

  it("[PF8] an address names a figure or its part, and nothing else opens anything", () => {
    for (const key of [
      { figure: "lineMissed" },
      { figure: "lineMissed", part: "behindBaseline.left" },
    ] as const) {
      expect(readFigureKey(writeFigureKey(key))).toEqual(key);
    }
    for (const text of [null, "", "lineMiss", "toString", ".left"])
      expect(readFigureKey(text)).toBeUndefined();
  });
});
