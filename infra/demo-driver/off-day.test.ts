import { freezeOpening, freezeWatch, watchesOf } from "@courtloom/decisions";
import { DEMO_FORMAT } from "@courtloom/demo";
import { foldLog, type LoggedEntry } from "@courtloom/match-log";
import { expect, it } from "vitest";
import { scriptOf } from "./script.ts";

/** Usual for an impatient player of the demo, as its seasons have it. */
const USUAL = { mean: 0.37, low: 0.26, high: 0.48, a: 148, b: 252, source: "own" } as const;
const watch = freezeWatch({
  ...{ side: "A", rate: "lineMissed", usual: USUAL, pastAttempts: Array(20).fill(40) },
  ...{ alpha: 0.05, quiet: false },
});

const hasAlert = (name: string, matchId: string): boolean => {
  const opened = freezeOpening({
    ...{ matchId, format: DEMO_FORMAT, firstServer: "A", doubles: false, coachingMode: "practice" },
    players: {
      A: { playerId: "a", hand: "right", own: true },
      B: { playerId: "b", hand: "unknown", own: false },
    },
    past: { own: { A: [], B: [] }, academy: [] },
  });
  const names = { A: name, B: "Visitor red" };
  const steps = scriptOf({ matchId, format: DEMO_FORMAT, firstServer: "A", names }, []);
  const bodies = [{ ...opened, watches: [watch] }, ...steps.map(({ body }) => body)];
  const log: LoggedEntry[] = bodies.map((body, i) => ({
    ...{ pos: i + 1, laneId: i === 0 ? "desk" : "lane", epoch: i === 0 ? 0 : 1 },
    entry: { v: 1, id: `entry-${i}`, n: i === 0 ? 1 : i, atMs: i, wallMs: i, body },
  }));
  const view = foldLog(log);
  if (!view.ok) throw new Error(view.error);
  return watchesOf(view.value).some(({ episodes }) => episodes.length > 0);
};

it("[DM10] an off day raises an alert in most matches, and one as usual in few", () => {
  const ids = Array.from({ length: 40 }, (_, i) => `match-${i}`);
  const alertsOf = (name: string) => ids.filter((id) => hasAlert(name, id)).length;
  expect(alertsOf("Kaito L.")).toBeGreaterThan(28);
  // As impatient, and plays as usual; the usual rate above is a little rough.
  expect(alertsOf("Bastian R.")).toBeLessThan(10);
});
