import type { Saying, TrailFact } from "./trail.ts";

/** The fact with what its sayings leave of it: the last one that is not voided, or the first. */
const saidBy = (target: TrailFact, sayings: readonly Saying[]): TrailFact => {
  const says = sayings.findLast(({ voided }) => !voided) ?? sayings[0];
  const { from: _, ...rest } = target;
  if (!says) return target;
  const { fact, laneId, saidAt, from } = says;
  return { ...rest, fact, laneId, saidAt, ...(from === undefined ? {} : { from }), sayings };
};

const sayingsOf = (target: TrailFact): readonly Saying[] => {
  if (target.sayings) return target.sayings;
  const { id, fact, laneId, saidAt, from } = target;
  return [{ id, fact, laneId, saidAt, voided: false, ...(from === undefined ? {} : { from }) }];
};

/** The fact as it is said anew. Without `source` its person stays who charted it. SPEC L4, L15. */
export const amendFact = (
  target: TrailFact,
  said: Pick<Saying, "id" | "fact" | "saidAt">,
  source: Pick<Saying, "laneId" | "from"> | undefined,
): TrailFact => {
  const { laneId, from } = target;
  const kept = { laneId, ...(from === undefined ? {} : { from }) };
  return saidBy(target, [...sayingsOf(target), { ...said, voided: false, ...(source ?? kept) }]);
};

/** The fact without one of its amendments, or with it again. SPEC L20. */
export const voidAmendment = (target: TrailFact, amendmentId: string, voided: boolean): TrailFact =>
  saidBy(
    target,
    sayingsOf(target).map((saying) => (saying.id === amendmentId ? { ...saying, voided } : saying)),
  );
