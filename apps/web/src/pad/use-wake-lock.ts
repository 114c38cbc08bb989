import { useEffect, useState } from "react";

/**
 * Whether the screen stays on: yes; not at this moment, as the device refused or the page is not in view; the
 * browser cannot; or the browser could, but not over plain http.
 */
export type KeptAwake = "yes" | "notNow" | "cannot" | "plainHttp";

const withoutLock = (): KeptAwake => (window.isSecureContext ? "cannot" : "plainHttp");

/** Keeps the screen on while `wanted` and the page is in view, where the browser can. Says whether it is. */
export const useWakeLock = (wanted: boolean): KeptAwake => {
  const [kept, setKept] = useState<KeptAwake>("notNow");
  useEffect(() => {
    if (!("wakeLock" in navigator)) {
      setKept(withoutLock());
      return;
    }
    if (!wanted) return;
    let sentinel: WakeLockSentinel | undefined;
    let isOver = false;
    const request = async () => {
      if (document.visibilityState !== "visible") return;
      try {
        const given = await navigator.wakeLock.request("screen");
        if (isOver) return void given.release();
        sentinel = given;
        given.addEventListener("release", () => setKept("notNow"));
        setKept("yes");
      } catch {
        // Refused while the battery is low: the screen then sleeps as usual, and nothing is lost by it.
        setKept("notNow");
      }
    };
    void request();
    document.addEventListener("visibilitychange", request);
    return () => {
      isOver = true;
      document.removeEventListener("visibilitychange", request);
      void sentinel?.release();
    };
  }, [wanted]);
  return kept;
};
