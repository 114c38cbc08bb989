import type { LoggedEntry } from "@courtloom/match-log";
import { useRouter } from "next/navigation";
import { useEffect } from "react";
import { type Chartists, unknownLaneOf } from "./known-chartists.ts";

/** Reads the page's names again, once for each lane that appears while it is open: the log holds no names. */
export const useLaneNames = (known: Chartists, entries: readonly LoggedEntry[]): void => {
  const { refresh } = useRouter();
  const unknown = unknownLaneOf(known, entries);
  useEffect(() => {
    if (unknown !== undefined) refresh();
  }, [unknown, refresh]);
};
