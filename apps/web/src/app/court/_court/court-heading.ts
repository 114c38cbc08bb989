import type { ByPlayer } from "@courtloom/core";

/** What a court's page needs beside the log, which holds no names. */
export interface CourtHeading {
  readonly matchId: string;
  readonly dayId: string | null;
  readonly dayName: string | null;
  readonly courtNo: number | null;
  readonly names: ByPlayer<string>;
  readonly timeZone: string;
  /** Chartists by lane, as far as they are known. */
  readonly chartists: Readonly<Record<string, string>>;
}
