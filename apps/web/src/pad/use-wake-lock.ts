import { useEffect } from "react";

/** Keeps the screen on while the page is in view, where the browser can; over plain http it cannot. */
export const useWakeLock = (): void => {
  useEffect(() => {
    if (!("wakeLock" in navigator)) return;
    let sentinel: WakeLockSentinel | undefined;
    const request = async () => {
      if (document.visibilityState !== "visible") return;
      try {
        sentinel = await navigator.wakeLock.request("screen");
      } catch {
        // Refused while the battery is low: the screen then sleeps as usual, and nothing is lost by it.
        sentinel = undefined;
      }
    };
    void request();
    document.addEventListener("visibilitychange", request);
    return () => {
      document.removeEventListener("visibilitychange", request);
      void sentinel?.release();
    };
  }, []);
};
