import type { Heard } from "../tile.ts";

/** Which phones were heard; sent about once a second while any was. */
export interface BoardHeard {
  readonly dayId: string;
  readonly serverMs: number;
  readonly heard: readonly Heard[];
}
