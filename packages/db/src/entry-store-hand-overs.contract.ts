import { expect, it } from "vitest";
import type { LaneOwner } from "./entry-store.ts";
import { laneOf } from "./testing/log-fixtures.ts";
import { ACADEMY, type StoreBench } from "./testing/store-bench.ts";

const UNTIL_MS = 1_780_000_600_000;
const ROSA: LaneOwner = { kind: "courtside", id: "session of Rosa" };

/** To whom a lead was handed over. Part of the contract of every entry store. */
export function handOversContract({ store, openLane, addHandOver }: StoreBench): void {
  it("[DB24] says until when a lead may be taken by whom it was handed to, and by nobody else", async () => {
    const lane = await openLane();
    expect(await store().handOver({ ...lane, to: ROSA })).toEqual({ ok: true, value: undefined });
    await addHandOver({ ...lane, to: ROSA, untilMs: UNTIL_MS });
    expect(await store().handOver({ ...lane, to: ROSA })).toEqual({ ok: true, value: { untilMs: UNTIL_MS } });
    const others = [
      { ...lane, to: { kind: "courtside", id: "session of Dana" } },
      { ...lane, to: { kind: "member", id: ROSA.id } },
      { ...lane, laneId: "another", to: ROSA },
      { ...lane, matchId: "another", to: ROSA },
      { ...lane, academyId: "heron", to: ROSA },
    ] as const;
    for (const other of others) {
      expect(await store().handOver(other)).toEqual({ ok: true, value: undefined });
    }
  });

  it("[DB24] a lead that was handed over and taken stays told as handed over, and the next lead was not", async () => {
    const lane = await openLane();
    await addHandOver({ ...lane, to: ROSA, untilMs: UNTIL_MS });
    const next = { ...laneOf(ACADEMY, lane.matchId, "next"), owner: ROSA };
    expect(await store().openLane({ ...next, takeOver: "lead" })).toMatchObject({ ok: true });
    expect(await store().handOver({ ...lane, to: ROSA })).toMatchObject({ value: { untilMs: UNTIL_MS } });
    expect(await store().handOver({ ...lane, laneId: "next", to: ROSA })).toEqual({
      ok: true,
      value: undefined,
    });
  });
}
