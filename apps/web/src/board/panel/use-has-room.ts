import { useSyncExternalStore } from "react";

/** As wide as it takes to keep the panel beside the courts. */
const WIDE = "(min-width: 1400px)";
/** More courts than these need the whole width. */
const MOST_COURTS_BESIDE = 16;

const subscribe = (changed: () => void): (() => void) => {
  const query = matchMedia(WIDE);
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
};

/** Whether the panel stands beside so many courts; else it is a sheet. SPEC rule BD47. */
export const useHasRoom = (courts: number): boolean => {
  const isWide = useSyncExternalStore(
    subscribe,
    () => matchMedia(WIDE).matches,
    () => false,
  );
  return isWide && courts <= MOST_COURTS_BESIDE;
};
