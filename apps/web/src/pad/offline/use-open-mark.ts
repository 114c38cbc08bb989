import { useEffect } from "react";

/** Name of the performance mark of the moment when the match stands on the screen; once per page. */
export const OPEN_MARK = "pad-open";

/** Leaves the mark when the match is shown, so that how long an opening takes can be measured from outside. */
export const useOpenMark = (shown: boolean): void => {
  useEffect(() => {
    if (shown && performance.getEntriesByName(OPEN_MARK).length === 0) performance.mark(OPEN_MARK);
  }, [shown]);
};
