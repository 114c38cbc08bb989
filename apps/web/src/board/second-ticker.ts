/** One tick a second for everything on the page that shows an age; stops when nothing does. */
export const createSecondTicker = () => {
  const listeners = new Set<() => void>();
  let timer: ReturnType<typeof setInterval> | undefined;
  const tick = () => {
    for (const listener of listeners) listener();
  };
  return {
    subscribe: (listener: () => void) => {
      listeners.add(listener);
      if (timer === undefined) {
        timer = setInterval(tick, 1_000);
        // A page in the background hardly ticks: catch up the moment it is looked at again.
        document.addEventListener("visibilitychange", tick);
      }
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0) return;
        clearInterval(timer);
        timer = undefined;
        document.removeEventListener("visibilitychange", tick);
      };
    },
  };
};

export const secondTicker = createSecondTicker();
