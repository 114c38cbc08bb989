import { useEffect } from "react";
import { fetchParts } from "./parts.ts";

/** Fetches every part at once where the browser will not keep them for an hour without a signal. */
export const usePartsOnPlainHttp = (): void => {
  useEffect(() => {
    if (!window.isSecureContext) void fetchParts();
  }, []);
};
