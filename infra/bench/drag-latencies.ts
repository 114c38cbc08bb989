import { err, ok, type Result } from "@courtloom/core";

/** One movement of the pointer, on the page's clock in milliseconds. */
export interface Move {
  /** When the browser got it. */
  readonly sentMs: number;
  /** When the drawing first changed after it; absent if it never did. */
  readonly drawnMs?: number;
}

/** What is read of Chromium's trace events; times in microseconds. */
export interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly ts: number;
  readonly id2?: { readonly local?: string };
  readonly args: {
    readonly id?: string;
    readonly data?: { readonly startTime?: number };
  };
}

export const MARK = "courtloom-bench";

interface Frame {
  readonly startUs: number;
  readonly endUs: number;
  readonly presentedUs: number;
}

export interface DragTimes {
  /** Of each movement, from the browser's getting it to the presentation of the first frame that shows it. */
  readonly latenciesMs: readonly number[];
  /** Of each presented frame: script, style, layout and paint on the main thread. */
  readonly framesMs: readonly number[];
}

/** Presented frames of a process, by the end of their work. */
const framesOf = (trace: readonly TraceEvent[], pid: number): Frame[] => {
  const own = trace.filter((event) => event.pid === pid).sort((a, b) => a.ts - b.ts);
  const presented = new Map(
    own.filter(({ name }) => name === "AnimationFrame::Presentation").map(({ args, ts }) => [args.id, ts]),
  );
  const works = own.filter(({ name, ph }) => name === "AnimationFrame" && (ph === "b" || ph === "e"));
  return works.flatMap((begin, i): Frame[] => {
    const presentedUs = presented.get(begin.args.id);
    if (begin.ph !== "b" || presentedUs === undefined) return [];
    const end = works.slice(i).find(({ ph, id2 }) => ph === "e" && id2?.local === begin.id2?.local);
    return end ? [{ startUs: begin.ts, endUs: end.ts, presentedUs }] : [];
  });
};

/**
 * Puts movements noted in the page and the browser's trace together. A movement is seen with the first presented
 * frame whose work ended after the drawing changed. The error is for people. Spec BN5.
 */
export const dragTimes = (
  trace: readonly TraceEvent[],
  moves: readonly Move[],
): Result<DragTimes, string> => {
  const mark = trace.find(({ name }) => name === MARK);
  if (mark?.args.data?.startTime === undefined) return err("The trace does not hold the page's mark.");
  const zeroUs = mark.ts - mark.args.data.startTime * 1000;
  const frames = framesOf(trace, mark.pid).sort((a, b) => a.endUs - b.endUs);
  const latenciesMs: number[] = [];
  for (const { sentMs, drawnMs } of moves) {
    if (drawnMs === undefined) return err("The drawing did not follow a movement at all.");
    const shown = frames.find(({ endUs }) => endUs >= zeroUs + drawnMs * 1000);
    if (!shown) return err("The trace holds no frame that shows the last movement.");
    latenciesMs.push((shown.presentedUs - zeroUs) / 1000 - sentMs);
  }
  return ok({ latenciesMs, framesMs: frames.map(({ startUs, endUs }) => (endUs - startUs) / 1000) });
};
