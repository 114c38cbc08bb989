import { OPPONENT_LEVELS } from "@courtloom/decisions";
import { CHARTING_LEVELS } from "@courtloom/match-log";
import { SURFACES } from "@courtloom/tennis";
import { z } from "zod";
import { dateField } from "../fields.ts";

const NOT_KNOWN = "notKnown";

/** Which of a player's matches and points count; a member that is absent asks nothing. */
export const historyFilterField = z
  .strictObject({
    /** Both ends included. */
    from: dateField.optional(),
    to: dateField.optional(),
    opponent: z.enum(OPPONENT_LEVELS, "Choose one of the four.").optional(),
    surface: z.enum([...SURFACES, NOT_KNOWN], "Choose a surface.").optional(),
    /** As `choices.formats` names it. */
    format: z.string().max(200, "Choose a format.").optional(),
    level: z.enum(CHARTING_LEVELS, "Choose a level.").optional(),
    /** As `choices.chartists` names them. */
    chartist: z.string().max(200, "Choose a name.").optional(),
  })
  .refine(({ from, to }) => from === undefined || to === undefined || from <= to, {
    path: ["to"],
    message: "The period ends before it begins. Choose a later end.",
  })
  .default({});

export type HistoryFilter = z.infer<typeof historyFilterField>;
