import { z } from "zod";
import { audit } from "../audit.ts";
import { codesEndMs } from "../day/end-of-day.ts";
import { failure } from "../errors/failure.ts";
import { idField } from "../fields.ts";
import { type StaffContext, staffProcedure } from "../procedure.ts";

const input = z.strictObject({
  dayId: idField,
  /** One court, the wall, or whatever of the day has no code yet. */
  wanted: z.discriminatedUnion("kind", [
    z.strictObject({ kind: z.literal("court"), courtId: idField }),
    z.strictObject({ kind: z.literal("wall") }),
    z.strictObject({ kind: z.literal("missing") }),
  ]),
});

type Wanted = z.infer<typeof input>["wanted"];
/** A court's id; null for the wall. */
type Place = string | null;

const missing = async (
  { auth, staff }: StaffContext,
  dayId: string,
  courtIds: readonly string[],
): Promise<Place[]> => {
  const codes = await auth.activeCodes(staff.academyId, dayId);
  const covered = new Set(codes.filter(({ code }) => code !== undefined).map(({ courtId }) => courtId));
  return [...courtIds, null].filter((place) => !covered.has(place));
};

const placesOf = async (
  ctx: StaffContext,
  dayId: string,
  courtIds: readonly string[],
  wanted: Wanted,
): Promise<Place[]> => {
  if (wanted.kind === "missing") return missing(ctx, dayId, courtIds);
  if (wanted.kind === "wall") return [null];
  if (!courtIds.includes(wanted.courtId)) throw failure("unknown_court");
  return [wanted.courtId];
};

const issue = async (ctx: StaffContext, dayId: string, place: Place, expiresMs: number) => {
  const { academyId, memberId: by } = ctx.staff;
  const kind = place === null ? ("wall" as const) : ("court" as const);
  const issued = await ctx.auth.issueCode({
    academyId,
    kind,
    dayId,
    courtId: place ?? undefined,
    by,
    expiresMs,
  });
  if (!issued.ok) throw failure(issued.error === "already_past" ? "day_over" : "unknown_court");
  await audit(ctx, "code.issue", issued.value.codeId);
  return { ...issued.value, kind, courtId: place };
};

/** Issues codes that live until four hours after the end of the day by the academy's clocks. Rule AP7. */
export const issueCodes = staffProcedure.input(input).mutation(async ({ ctx, input: { dayId, wanted } }) => {
  const board = await ctx.store.dayBoard({ academyId: ctx.staff.academyId, dayId });
  if (board === undefined) throw failure("unknown_day");
  const courtIds = board.courts.map((court) => court.courtId);
  const expiresMs = codesEndMs(board.day.date, board.timeZone);
  if (expiresMs <= ctx.clock.wallMs()) throw failure("day_over");
  const issued = [];
  for (const place of await placesOf(ctx, dayId, courtIds, wanted)) {
    issued.push(await issue(ctx, dayId, place, expiresMs));
  }
  return { issued };
});
