import type { System } from "./systems.ts";

const MARKS: readonly (readonly [RegExp, System["id"]])[] = [
  [/iPhone|iPad|iPod/, "apple-phone"],
  [/Android/, "android"],
  [/Windows/, "windows"],
  [/Macintosh/, "mac"],
  [/Linux|CrOS/, "linux"],
];

/** Which steps to open first, by what the browser says of its device; undefined opens none. */
export const guessSystem = (userAgent: string | null): System["id"] | undefined =>
  MARKS.find(([mark]) => mark.test(userAgent ?? ""))?.[1];
