import type { Courtside, CourtsideMatch } from "./courtside.ts";

/** The match that opens by itself: the only one that is being played, or the only one there is to play. */
export const matchToOpen = ({ matches }: Courtside): CourtsideMatch | undefined => {
  const current = matches.filter(({ state }) => state === "playing" || state === "suspended");
  if (current.length > 0) return current.length === 1 ? current[0] : undefined;
  const open = matches.filter(({ state }) => state !== "over" && state !== "empty");
  return open.length === 1 ? open[0] : undefined;
};
