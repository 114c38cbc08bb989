import { describe, expect, it } from "vitest";
import type { EntryBody } from "./entry.ts";
import { foldLog } from "./fold.ts";
import { scoreRefusal } from "./score-refusal.ts";
import { idAt, makeLog, pointsOf } from "./testing/make-log.ts";

const viewOf = (bodies: readonly EntryBody[]) => {
  const folded = foldLog(makeLog(bodies));
  if (!folded.ok) throw new Error(folded.error);
  return folded.value;
};

describe("why the score cannot take a fact", () => {
  it("[L26] is the scorer's own reason, in the fact's place", () => {
    const stated: EntryBody = { kind: "ScoreStated", score: { games: [6, 4] }, missed: false };
    expect(scoreRefusal(viewOf([...pointsOf("AB"), stated, ...pointsOf("A")]), idAt(4))).toEqual({
      code: "impossible_score",
      member: "games",
      reason: "6-4 is a finished set: put it in sets",
    });
    const over = viewOf(pointsOf(`${"A".repeat(48)}B`));
    expect(scoreRefusal(over, idAt(50))).toEqual({ code: "match_over", status: "completed" });
  });

  it("[L26] is none for what counts, does nothing to the score, was taken out, or is not there", () => {
    const view = viewOf([
      ...pointsOf("AB"),
      { kind: "PlayResumed" },
      { kind: "ScoreStated", score: { games: [6, 4] }, missed: false },
      { kind: "EntryVoided", target: idAt(5) },
    ]);
    for (const id of [idAt(2), idAt(4), idAt(5), idAt(99)]) expect(scoreRefusal(view, id)).toBeUndefined();
  });
});
