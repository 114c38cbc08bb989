"use client";
import type { HistoryFilter } from "@courtloom/api";
import { useSearchParams } from "next/navigation";
import { useCallback, useMemo } from "react";
import { readFilter, writeFilter } from "./history-place.ts";

/** Where a person is on a page of figures: all of it stands in the address, so that going back undoes each step. */
export interface HistoryPlace {
  readonly filter: HistoryFilter;
  /** What is opened beside the page, by the page's own names; null: nothing. */
  readonly opened: string | null;
  readonly setFilter: (filter: HistoryFilter) => void;
  readonly open: (name: string) => void;
  readonly close: () => void;
}

const OPENED = "open";

const go = (search: URLSearchParams): void => {
  const query = search.toString();
  history.pushState(null, "", query === "" ? location.pathname : `?${query}`);
};

/** Reads and changes the address without asking the server for the page again. SPEC PF6. */
export const useHistoryPlace = (): HistoryPlace => {
  const search = useSearchParams();
  const filter = useMemo(() => readFilter(search), [search]);
  const opened = search.get(OPENED);
  const setFilter = useCallback((next: HistoryFilter) => go(writeFilter(next)), []);
  const open = useCallback(
    (name: string) => {
      const next = writeFilter(filter);
      next.set(OPENED, name);
      go(next);
    },
    [filter],
  );
  const close = useCallback(() => go(writeFilter(filter)), [filter]);
  return { filter, opened, setFilter, open, close };
};
