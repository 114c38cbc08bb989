import type { PhoneStorage, StorageKeeping } from "./phone-storage.ts";

const KEEPING: Readonly<Record<StorageKeeping, string>> = {
  kept: "Kept: this browser does not clear the points by itself.",
  mayGo: "May be cleared: this browser may clear the points when the phone runs short of space.",
  unknown: "Not known whether this browser clears the points by itself.",
};

/** What stands under "This phone" about keeping and opening; `opens` is whether it opens without a network. SPEC PD44. */
export const phoneWords = (
  { keeping, nearlyFull }: PhoneStorage,
  opens: boolean | undefined,
): readonly string[] => [
  KEEPING[keeping],
  ...(nearlyFull
    ? [
        `Nearly full: ${nearlyFull.usedMb} of ${nearlyFull.ofMb} MB. Save unsent to a file, then free some space.`,
      ]
    : []),
  ...(opens === undefined
    ? []
    : [
        opens
          ? "Opens without a network."
          : "Does not open without a network yet. Keep this page open where there is none.",
      ]),
];
