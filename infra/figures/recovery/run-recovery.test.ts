import { describe, expect, it } from "vitest";
import { runHere } from "../run-tasks.ts";
import { recoveryTable } from "./recovery-table.ts";
import { runRecovery } from "./run-recovery.ts";

describe("worths that are known", () => {
  it("[OP7, OP8] are found nearer by the fit than without it, with honest intervals; too small spreads lie", async () => {
    const figures = await runRecovery({ seed: 20261125, academies: 2 }, runHere);
    const { raw, academy, set, halved, doubled } = figures.nearness;
    expect(set.rmse).toBeLessThan(5.7);
    expect(academy.rmse).toBeGreaterThan(set.rmse + 0.4);
    expect(raw.rmse).toBeGreaterThan(2 * set.rmse);
    expect(Math.abs(set.strongBias)).toBeLessThan(1.5);
    expect([set.coverage > 86, set.coverage < 93]).toEqual([true, true]);
    expect([halved.coverage > 54, halved.coverage < 66]).toEqual([true, true]);
    expect(doubled.coverage).toBeGreaterThan(set.coverage + 3);
    expect([halved.width, set.width, doubled.width].map(Math.round)).toEqual([9, 16, 25]);
    expect(figures.pointsLostCoverage).toBeGreaterThan(82);
    const table = recoveryTable(figures);
    expect(table).toHaveLength(8);
    expect(table[1]).toContain("raw difference");
    expect(table[3]).toContain(set.coverage.toFixed(1));
  });
});
