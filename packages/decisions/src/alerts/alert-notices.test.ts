import { foldLog } from "@courtloom/match-log";
import { idAt, makeLog, openedWith, pointsOf } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { breaksOf, hasBreakSince } from "./alert-breaks.ts";
import { alertsToTell } from "./alerts-to-tell.ts";
import { rankAlerts } from "./rank-alerts.ts";
import { takenBy } from "./taken-by.ts";

const viewOf = (letters: string) => {
  const view = foldLog(makeLog(pointsOf(letters), openedWith()));
  if (!view.ok) throw new Error(view.error);
  return view.value;
};

describe("when staff are told of an alert", () => {
  it("[AL5] is due when ends were changed since the point that raised it began", () => {
    const [first, last] = [idAt(2), idAt(5)];
    expect(breaksOf(viewOf("AAA"))).toBe(0);
    expect(hasBreakSince(viewOf("AAA"), first)).toBe(false);
    expect(hasBreakSince(viewOf("AAAA"), first)).toBe(true);
    expect(hasBreakSince(viewOf("AAAA"), last)).toBe(true);
    const next = viewOf("AAAAA");
    expect(hasBreakSince(next, idAt(6))).toBe(false);
    expect(hasBreakSince(next, "of no point")).toBe(false);
  });

  it("[AL5] is due when the set is over though ends are not changed, and when the match is", () => {
    const set = viewOf("A".repeat(24));
    expect([set.score.sets.length, hasBreakSince(set, idAt(25))]).toEqual([1, true]);
    const over = viewOf("A".repeat(48));
    expect([over.score.over, hasBreakSince(over, idAt(49))]).toEqual([true, true]);
  });

  it("[AL5] leaves out what is snoozed, closed, withdrawn or not due; the strongest comes first", () => {
    const alert = { state: "standing", strength: 0.5, isDue: true, isSnoozed: false } as const;
    const alerts = [
      { ...alert, name: "plain" },
      { ...alert, name: "strong", strength: 0.9, state: "easing" as const },
      { ...alert, name: "snoozed", isSnoozed: true },
      { ...alert, name: "closed", state: "closed" as const },
      { ...alert, name: "withdrawn", state: "withdrawn" as const },
      { ...alert, name: "early", isDue: false },
    ];
    expect(alertsToTell(alerts).map(({ name }) => name)).toEqual(["strong", "plain"]);
  });
});

describe("the order of alerts", () => {
  it("[AL4] is by state, then strength, then age", () => {
    const alerts = [
      { state: "withdrawn", strength: 1, raisedMs: 1, name: "gone" },
      { state: "closed", strength: 0, raisedMs: 1, name: "over" },
      { state: "standing", strength: 0.6, raisedMs: 9, name: "young" },
      { state: "standing", strength: 0.6, raisedMs: 2, name: "old" },
      { state: "standing", strength: 1, raisedMs: 9, name: "strong" },
      { state: "easing", strength: 0.4, raisedMs: 1, name: "fading" },
    ] as const;
    expect(rankAlerts(alerts).map(({ name }) => name)).toEqual([
      "strong",
      "old",
      "young",
      "fading",
      "over",
      "gone",
    ]);
  });
});

describe("what took the evidence away", () => {
  it("[AL3] is the last correction after the point, and nothing where there is none", () => {
    const voided = (pos: number) => ({ kind: "EntryVoided", target: idAt(pos) }) as const;
    const log = makeLog([...pointsOf("AB"), voided(2), voided(3), ...pointsOf("A")]);
    expect(takenBy(log, 3)?.pos).toBe(5);
    expect(takenBy(log, 5)).toBeUndefined();
    expect(takenBy(makeLog(pointsOf("AB")), 1)).toBeUndefined();
  });
});
