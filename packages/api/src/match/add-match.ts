import { SIDES } from "@courtloom/core";
import { z } from "zod";
import { audit } from "../audit.ts";
import { failure } from "../errors/failure.ts";
import { coachingModeField, idField, shortText, surfaceField } from "../fields.ts";
import { type StaffContext, staffProcedure } from "../procedure.ts";
import { formatField } from "./format-field.ts";
import { resolvePlayers } from "./resolve-players.ts";
import { sideField } from "./side-field.ts";

const input = z
  .strictObject({
    dayId: idField,
    courtId: idField,
    sides: z.strictObject({ A: sideField, B: sideField }, "Name both sides."),
    format: formatField,
    coachingMode: coachingModeField.default("notKnown"),
    firstServer: z.enum(SIDES, "Choose who serves first, or leave it open.").optional(),
    title: shortText("The title", 60).optional(),
    /** Where it differs from the day's. */
    surface: surfaceField,
  })
  .refine(({ sides }) => sides.A.length === sides.B.length, {
    path: ["sides"],
    message: "One side has a pair and the other a single player. Name one or two on both.",
  });

type NewMatch = z.infer<typeof input>;

/** Before anything is written: the day and its court are this academy's. */
const checkPlace = async ({ store, staff }: StaffContext, { dayId, courtId }: NewMatch): Promise<void> => {
  const board = await store.dayBoard({ academyId: staff.academyId, dayId });
  if (board === undefined) throw failure("unknown_day");
  if (!board.courts.some((court) => court.courtId === courtId)) throw failure("unknown_court");
};

const write = async (ctx: StaffContext, wanted: NewMatch): Promise<string> => {
  const players = await resolvePlayers(ctx, wanted.sides);
  const [a = "", a2] = players.A.ids;
  const [b = "", b2] = players.B.ids;
  const isPair = a2 !== undefined && b2 !== undefined;
  const added = await ctx.store.addMatch({
    academyId: ctx.staff.academyId,
    dayId: wanted.dayId,
    courtId: wanted.courtId,
    playerIds: { A: a, B: b },
    ...(isPair ? { partnerIds: { A: a2, B: b2 } } : {}),
    format: wanted.format,
    ...(wanted.firstServer ? { firstServer: wanted.firstServer } : {}),
    ...(wanted.title ? { title: wanted.title } : {}),
    ...(wanted.surface ? { surface: wanted.surface } : {}),
    coachingMode: wanted.coachingMode,
    // Doubles are score only; in singles the academy's own players are charted.
    subjects: isPair ? [] : SIDES.filter((side) => players[side].own),
  });
  if (!added.ok) throw failure(added.error.code);
  return added.value.matchId;
};

/** Adds a match at the end of a court's order of play; names that are new are put on the list of players. */
export const addMatch = staffProcedure.input(input).mutation(async ({ ctx, input: wanted }) => {
  await checkPlace(ctx, wanted);
  const matchId = await write(ctx, wanted);
  await audit(ctx, "match.add", matchId);
  return { matchId };
});
