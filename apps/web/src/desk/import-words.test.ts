import type { CheckedLane } from "@courtloom/api";
import { describe, expect, it } from "vitest";
import { readChosenFile } from "./import-read.ts";
import { countWords, freshCount, laneWords, takenWords } from "./import-words.ts";

const lane = (over: Partial<CheckedLane> = {}): CheckedLane => ({
  ...{ no: 1, match: {} as CheckedLane["match"], chartist: "Ioan P.", entries: 7, points: 5 },
  ...{ fresh: 4, alreadyThere: 3, elsewhere: 0, conflicting: 0, unreadable: 0, ...over },
});
const file = (text: string, size = text.length) => ({ size, text: async () => text });

describe("a file taken in at the desk", () => {
  it("[WB13] is counted before anything is confirmed: new, there already, of another lane", () => {
    expect(countWords(lane())).toEqual(["7 entries, 5 points among them", "4 new", "3 already there"]);
    expect(countWords(lane({ entries: 1, points: 1, fresh: 0, alreadyThere: 0, elsewhere: 1 }))).toEqual([
      "1 entry, 1 point among them",
      "1 already there in another lane",
    ]);
    expect(laneWords(lane())).toBe("Charted by Ioan P.");
    expect(laneWords(lane({ chartist: null }))).toContain("never heard of this phone's lane");
    expect(laneWords(lane({ match: null }))).toContain("not taken in");
    expect(freshCount([lane(), lane({ match: null }), lane({ fresh: 0, unreadable: 1 })])).toBe(5);
  });

  it("[WB13] says what became of each lane, and what to do where it stopped", () => {
    expect(takenWords({ took: 4, passedOver: 3, beside: false })).toEqual([
      "4 entries taken in.",
      "3 passed over: there already, or kept aside.",
    ]);
    const gap = takenWords({ took: 0, passedOver: 0, beside: false, stop: { code: "gap", n: 12 } });
    expect(gap[1]).toMatch(/^Entry 12 has to come first.*Save everything of this match/);
    const codes = ["identity_conflict", "not_open", "sealed", "unknown_match", "unknown_lane"] as const;
    for (const code of codes) {
      const said = takenWords({ took: 1, passedOver: 0, beside: true, stop: { code, n: 2 } });
      expect(said).toHaveLength(3);
      for (const text of said) expect(text).toMatch(/^[A-Z0-9].*\.$/);
    }
  });

  it("[WB13] that is too large or no JSON is refused with a sentence before it is sent", async () => {
    expect(await readChosenFile(file('{"a":1}'))).toEqual({ ok: true, value: { a: 1 } });
    const large = await readChosenFile(file("{}", 3.1 * 1024 * 1024));
    expect(!large.ok && large.error).toMatch(/^This file has 3\.1 MB; .* at most 2 MB\./);
    const odd = await readChosenFile(file("not json"));
    expect(!odd.ok && odd.error).toMatch(/cannot be read\. Choose one/);
  });
});
