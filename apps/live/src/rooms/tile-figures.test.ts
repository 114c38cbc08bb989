import { STARTER_PLAN } from "@courtloom/decisions";
import { foldLog, type Shot } from "@courtloom/match-log";
import { makeLog, openedWith, pointTo } from "@courtloom/match-log/testing";
import { wilson } from "@courtloom/stats";
import { describe, expect, it } from "vitest";
import { tileFiguresOf } from "./tile-figures.ts";

/** A ball down the line from behind the baseline, that sat up or came low with the opponent in place. */
const lineBall = (ballHeight: "sitsUp" | "low"): Shot => ({
  ...{ striker: "A", kind: "groundstroke", ballHeight, opponent: "set" },
  ...{ from: { right: 300, away: -1_250 }, to: { right: 300, away: 1_000 } },
});
const returned: Shot = {
  ...{ striker: "B", kind: "groundstroke" },
  ...{ from: { right: 300, away: 1_250 }, to: { right: 300, away: -1_000 } },
};
const rally = pointTo("A", {
  level: "every",
  serve: { outcome: "firstIn", faults: 0 },
  shots: [returned, lineBall("sitsUp"), returned, lineBall("low"), returned, lineBall("sitsUp")],
});

const figuresWith = (plans: { readonly isPlanned: boolean }) => {
  const plan = { planId: "plan-1", version: 1, rules: STARTER_PLAN };
  const opened = openedWith(plans.isPlanned ? { plans: { A: plan, B: null } } : {});
  const view = foldLog(makeLog([rally, rally], opened));
  if (!view.ok) throw new Error(view.error);
  return tileFiguresOf(view.value);
};

describe("figures of a tile", () => {
  it("[LV53] say how many judged balls kept to the plan, with n and interval", () => {
    const { A, B } = figuresWith({ isPlanned: true });
    const interval = wilson(A?.planKept?.x ?? 0, A?.planKept?.n ?? 0);
    expect(A?.planKept).toEqual({ x: 4, n: 6, low: interval?.low, high: interval?.high });
    expect(A?.lineMissed).toMatchObject({ x: 0, n: 6 });
    expect(B).toBeNull();
  });

  it("[LV53] say nothing of a plan where there is none", () => {
    expect(figuresWith({ isPlanned: false }).A).not.toHaveProperty("planKept");
  });
});
