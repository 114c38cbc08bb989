import { BASELINE, SIDELINE } from "@courtloom/tennis";
import { describe, expect, it } from "vitest";
import { missCross, PLAN, planPoint } from "./court-plan.ts";

describe("court plan", () => {
  it("[BD11] puts the middle of the net in the middle and the striker's end at the bottom", () => {
    expect(planPoint({ x: 0, y: 0 })).toEqual({ x: PLAN.width / 2, y: PLAN.height / 2 });
    expect(planPoint({ x: 0, y: -BASELINE }).y).toBeGreaterThan(planPoint({ x: 0, y: BASELINE }).y);
    expect(planPoint({ x: SIDELINE, y: 0 }).x).toBeGreaterThan(planPoint({ x: -SIDELINE, y: 0 }).x);
  });

  it("[BD11] keeps a metre as long across as along", () => {
    const origin = planPoint({ x: 0, y: 0 });
    expect(planPoint({ x: 1, y: 0 }).x - origin.x).toBe(100);
    expect(origin.y - planPoint({ x: 0, y: 1 }).y).toBe(100);
  });

  it("[BD11] draws what lies beyond the plan at its edge", () => {
    expect(planPoint({ x: 30, y: 30 })).toEqual({ x: PLAN.width, y: 0 });
  });

  it("[BD11] marks a missed end by a cross around it", () => {
    expect(missCross({ x: 100, y: 200 }, 10)).toBe("M90 190L110 210M90 210L110 190");
  });
});
