import type { Tile } from "@courtloom/protocol";
import { type CourtMark, markOf } from "./court-mark.ts";

/** A board as it was when somebody last looked. */
export interface LastLook {
  /** Server's clock. */
  readonly atMs: number;
  /** By court id. */
  readonly courts: Readonly<Record<string, CourtMark>>;
}

/** A look that is shorter does not count: coming back for a second must not lose what is still unread. */
export const LEAST_LOOK_MS = 10_000;

export const lookAtBoard = (tiles: Iterable<Tile>, atMs: number): LastLook => ({
  atMs,
  courts: Object.fromEntries([...tiles].map((tile) => [tile.courtId, markOf(tile)])),
});

/** Whether hiding the page makes a new last look of it. SPEC rule BD46. */
export const isLookedAt = (shownForMs: number): boolean => shownForMs >= LEAST_LOOK_MS;

const isMark = (value: unknown): value is CourtMark =>
  typeof value === "object" && value !== null && "state" in value && "sets" in value && "progress" in value;

/** Reads a look that this tab kept over a reload; undefined if there is none, or none that can be read. */
export const readLook = (text: string | null): LastLook | undefined => {
  if (text === null) return undefined;
  try {
    const look = JSON.parse(text) as LastLook | null;
    if (typeof look?.atMs !== "number" || typeof look.courts !== "object" || look.courts === null)
      return undefined;
    return Object.values(look.courts).every(isMark) ? look : undefined;
  } catch {
    // Written by something else: the next look begins anew.
    return undefined;
  }
};
