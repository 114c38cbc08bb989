import type { ByPlayer } from "@courtloom/core";
import type { Tile, TileProgress, TileState } from "@courtloom/protocol";
import type { FinishedSet } from "@courtloom/tennis";

/** What of a court has to be remembered to say later what changed. */
export interface CourtMark {
  readonly matchId: string | null;
  readonly state: TileState;
  readonly sets: readonly FinishedSet[];
  readonly progress: TileProgress | null;
  readonly chartist: string | null;
}

export const markOf = ({ matchId, state, score, staff }: Tile): CourtMark => ({
  matchId,
  state,
  sets: score?.sets ?? [],
  progress: staff?.progress ?? null,
  chartist: staff?.chartist ?? null,
});

export type Names = ByPlayer<string>;
