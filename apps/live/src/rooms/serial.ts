/** Runs tasks one after the other, in the order they came. A task that fails fails alone. */
export interface Serial {
  readonly run: <T>(task: () => Promise<T>) => Promise<T>;
  /** Tasks that wait or run. */
  readonly waiting: () => number;
}

export const createSerial = (): Serial => {
  let last: Promise<unknown> = Promise.resolve();
  let waiting = 0;
  return {
    run: (task) => {
      waiting += 1;
      const done = last.then(task).finally(() => {
        waiting -= 1;
      });
      // Whoever called sees the failure; the next in the queue only waits for the end.
      last = done.catch(() => undefined);
      return done;
    },
    waiting: () => waiting,
  };
};
