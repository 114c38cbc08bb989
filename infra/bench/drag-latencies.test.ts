import { describe, expect, it } from "vitest";
import { dragTimes, MARK, type TraceEvent } from "./drag-latencies.ts";

const PAGE = 7;

/** The page's clock began at 1,000 ms of the trace's. */
const mark: TraceEvent = {
  ...{ name: MARK, ph: "I", pid: PAGE, ts: 1_005_000 },
  args: { data: { startTime: 5 } },
};

/** A frame at times of the page's clock, in milliseconds. */
const frame = (
  id: string,
  [start, end, presented]: readonly [number, number, number?],
  pid = PAGE,
): TraceEvent[] => {
  const id2 = { local: "0x1" };
  const at = (ms: number): number => 1_000_000 + ms * 1000;
  return [
    { name: "AnimationFrame", ph: "b", pid, id2, ts: at(start), args: { id } },
    { name: "AnimationFrame", ph: "e", pid, id2, ts: at(end), args: {} },
    ...(presented === undefined
      ? []
      : [{ name: "AnimationFrame::Presentation", ph: "n", pid, id2, ts: at(presented), args: { id } }]),
  ];
};

describe("from a movement to the paint that shows it", () => {
  it("[BN5] runs from the movement to the presentation of the frame in which the drawing changed", () => {
    const trace = [mark, ...frame("a", [10, 14, 20]), ...frame("b", [26, 31, 37])];
    const times = dragTimes(trace, [
      { sentMs: 8, drawnMs: 12 },
      { sentMs: 20, drawnMs: 28 },
    ]);
    expect(times).toEqual({ ok: true, value: { latenciesMs: [12, 17], framesMs: [4, 5] } });
  });

  it("[BN5] counts the next frame when the drawing changed only after the one that handled the movement", () => {
    const trace = [mark, ...frame("a", [10, 14, 20]), ...frame("b", [26, 31, 37])];
    expect(dragTimes(trace, [{ sentMs: 8, drawnMs: 15 }])).toMatchObject({
      value: { latenciesMs: [29] },
    });
  });

  it("[BN5] takes no frame that was never presented, and none of another page", () => {
    const trace = [
      ...[mark, ...frame("a", [10, 14]), ...frame("x", [10, 14, 18], PAGE + 1)],
      ...frame("b", [26, 31, 37]),
    ];
    expect(dragTimes(trace, [{ sentMs: 8, drawnMs: 12 }])).toMatchObject({ value: { latenciesMs: [29] } });
  });

  it("[BN5] gives no figure when a movement was never drawn or never shown", () => {
    const trace = [mark, ...frame("a", [10, 14, 20])];
    expect(dragTimes(trace, [{ sentMs: 8 }])).toMatchObject({ ok: false });
    expect(dragTimes(trace, [{ sentMs: 15, drawnMs: 16 }])).toMatchObject({ ok: false });
    expect(dragTimes(trace.slice(1), [{ sentMs: 8, drawnMs: 12 }])).toMatchObject({ ok: false });
  });
});
