import type { Runtime } from "./runtime.ts";

/**
 * Runs a task again and again, `ms` after its last end, so that slow runs never pile up. A failing run is
 * logged and the next one comes. Returns how to stop.
 */
export const every = (
  { timers, log }: Runtime,
  ms: number,
  name: string,
  task: () => Promise<void> | void,
): (() => void) => {
  let stopped = false;
  let cancel = (): void => undefined;
  const run = async (): Promise<void> => {
    try {
      await task();
    } catch (error) {
      log.fault(`${name} failed`, { error });
    }
    if (!stopped) cancel = timers.after(ms, () => void run());
  };
  cancel = timers.after(ms, () => void run());
  return () => {
    stopped = true;
    cancel();
  };
};
