import type { Tile } from "../tile.ts";

/** One court changed. At most four a second per court. */
export interface BoardTile {
  readonly dayId: string;
  readonly serverMs: number;
  readonly tile: Tile;
}
