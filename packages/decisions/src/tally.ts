import type { PlayerFigures } from "./figures.ts";

/** What one player did in one match, as counts alone; adding two tallies gives a tally. */
export interface Tally {
  readonly version: 1;
  readonly lineMissed: { readonly x: number; readonly n: number };
  readonly lineShare: { readonly x: number; readonly n: number };
}

const bare = ({ x, n }: { readonly x: number; readonly n: number }) => ({ x, n });

/** The tally of a player's figures. SPEC D7. */
export const tallyOf = (figures: PlayerFigures): Tally => ({
  version: 1,
  lineMissed: bare(figures.lineMissed),
  lineShare: bare(figures.lineShare),
});
