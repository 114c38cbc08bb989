import type { FeelDevice } from "./feel.ts";

/** What this browser can do; to be asked in a browser only. */
export const feelDevice = (): FeelDevice => ({
  vibrate:
    "vibrate" in navigator
      ? (pattern) => {
          // Refused before the first touch on the page: then there is nothing to tell of either.
          navigator.vibrate([...pattern]);
        }
      : undefined,
  createAudio: "AudioContext" in window ? () => new AudioContext() : undefined,
});
