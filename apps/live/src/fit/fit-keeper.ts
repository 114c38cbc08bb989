import { isDeepStrictEqual } from "node:util";
import type { DayStore } from "@courtloom/db";
import { type AcademyFit, type fitAcademy, readTally } from "@courtloom/decisions";
import { logError, type Runtime } from "../runtime.ts";

type Tallies = Parameters<typeof fitAcademy>[0];

/** Matches that end together are fitted together. */
const SOON_MS = 30_000;
/** An academy is fitted again at most so often: it takes a processor for a while and one match changes little. */
const AGAIN_MS = 15 * 60_000;

/** Keeps each academy's fit in step with its matches, beside the courts and never on anybody's request. SPEC HF12. */
export interface FitKeeper {
  /** A match settled: the academy is fitted again soon. Never waits, never throws. */
  readonly ask: (academyId: string) => void;
  /** Name of the newest fit, for an opening to freeze; null, and the first one is asked for, where there is none. */
  readonly version: (academyId: string) => Promise<string | null>;
  readonly stop: () => void;
}

interface FitKeeperOptions {
  readonly days: Pick<DayStore, "academyTallies" | "choiceFit" | "addChoiceFit">;
  readonly runtime: Runtime;
  readonly fit: (tallies: Tallies) => Promise<AcademyFit>;
}

/** One that cannot be read counts for nothing. */
const readTallies = async (days: FitKeeperOptions["days"], academyId: string): Promise<Tallies> =>
  (await days.academyTallies({ academyId })).flatMap(({ playerId, tally }) => {
    const known = readTally(tally);
    return known.ok ? [{ playerId, tally: known.value }] : [];
  });

export const createFitKeeper = ({ days, runtime, fit }: FitKeeperOptions): FitKeeper => {
  /** Academies that a fit is waited for or worked out for, and how to take the waiting back. */
  const waiting = new Map<string, () => void>();
  const running = new Set<string>();
  const askedMeanwhile = new Set<string>();
  const endedMs = new Map<string, number>();
  let stopped = false;

  const refit = async (academyId: string): Promise<void> => {
    const fitted = await fit(await readTallies(days, academyId));
    const newest = await days.choiceFit({ academyId });
    if (!isDeepStrictEqual(newest?.fit, fitted)) await days.addChoiceFit({ academyId, fit: fitted });
  };
  const run = async (academyId: string): Promise<void> => {
    waiting.delete(academyId);
    running.add(academyId);
    try {
      await refit(academyId);
    } catch (error) {
      // The next match that settles asks again.
      if (!stopped) logError(runtime, "an academy could not be fitted yet", { error });
    } finally {
      running.delete(academyId);
      endedMs.set(academyId, runtime.clock.monotonicMs());
      if (askedMeanwhile.delete(academyId)) ask(academyId);
    }
  };
  const ask = (academyId: string): void => {
    if (stopped || waiting.has(academyId)) return;
    if (running.has(academyId)) {
      askedMeanwhile.add(academyId);
      return;
    }
    const ended = endedMs.get(academyId);
    const rest = ended === undefined ? 0 : ended + AGAIN_MS - runtime.clock.monotonicMs();
    const cancel = runtime.timers.after(Math.max(SOON_MS, rest), () => void run(academyId));
    waiting.set(academyId, cancel);
  };
  return {
    ask,
    version: async (academyId) => {
      const newest = await days.choiceFit({ academyId });
      if (!newest) ask(academyId);
      return newest ? String(newest.version) : null;
    },
    stop: () => {
      stopped = true;
      for (const cancel of waiting.values()) cancel();
      waiting.clear();
    },
  };
};
