import { useEffect } from "react";
import { askToKeep } from "./phone-storage.ts";

/** Asks the browser once to keep what is stored, as soon as this person has charted something. SPEC PD44. */
export const useKeptStorage = (charts: boolean): void => {
  useEffect(() => {
    if (charts) void askToKeep();
  }, [charts]);
};
