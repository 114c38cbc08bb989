import type { NoticeClaim } from "../alert-store.ts";

/** How many more notices a person may get of a match, given the moments of those they got. Rule AL13. */
export const noticesLeft = (given: readonly number[], { atBreak, most }: NoticeClaim): number =>
  Math.max(
    0,
    Math.min(most.inMatch - given.length, most.atBreak - given.filter((at) => at === atBreak).length),
  );
