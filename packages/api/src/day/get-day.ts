import { z } from "zod";
import type { CourtRow, DayRow } from "../api-store.ts";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { type DeskMatch, toDeskMatch } from "../match/desk-match.ts";
import { staffProcedure } from "../procedure.ts";

export interface DeskCourt extends CourtRow {
  /** In order of play. */
  readonly matches: readonly DeskMatch[];
}

export interface DeskDay {
  readonly day: DayRow;
  readonly academyName: string;
  readonly timeZone: string;
  /** By court number. */
  readonly courts: readonly DeskCourt[];
  /** Matches that have no court yet. */
  readonly unplaced: readonly DeskMatch[];
}

/** A day as its desk sees it: every court with its order of play. */
export const getDay = staffProcedure
  .input(z.strictObject({ dayId: idField }))
  .query(async ({ ctx, input: { dayId } }): Promise<DeskDay> => {
    const { academyId } = ctx.staff;
    const board = await ctx.store.dayBoard({ academyId, dayId });
    if (board === undefined) throw failure("unknown_day");
    const matches = (await ctx.store.dayMatches({ academyId, dayId })).map(toDeskMatch);
    return {
      day: board.day,
      academyName: board.academyName,
      timeZone: board.timeZone,
      courts: board.courts.map(({ courtId, no, name }) => ({
        courtId,
        no,
        name,
        matches: matches.filter((match) => match.courtId === courtId),
      })),
      unplaced: matches.filter((match) => match.courtId === null),
    };
  });
