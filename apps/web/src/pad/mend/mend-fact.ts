import type { EntryBody, MatchView } from "@courtloom/match-log";

/**
 * What was said of ends since a point has to name another point once that one no longer counts: the next one, or
 * none. Empty where nothing was said since it.
 */
const endsNamed = ({ trail, points }: MatchView, id: string): readonly EntryBody[] => {
  const at = points.findIndex((point) => point.id === id);
  if (at < 0) return [];
  return trail.facts.flatMap(({ id: target, fact, voided, pos }): readonly EntryBody[] => {
    if (fact.kind !== "EndsStated" || fact.since !== id || voided) return [];
    // Points charted after the statement were seen right already.
    const next = points.slice(at + 1).find((point) => point.pos < pos)?.id;
    const { since: _, ...stated } = fact;
    return [{ kind: "EntryAmended", target, to: { ...stated, ...(next ? { since: next } : {}) } }];
  });
};

/** A fact out of the match, with what has to follow from that. SPEC PD80. */
export const takenOut = (id: string, view: MatchView): readonly EntryBody[] => [
  ...endsNamed(view, id),
  { kind: "EntryVoided", target: id },
];

/** As taken out, and the log says that it was a point played again. */
export const replayedInstead = (id: string, view: MatchView): readonly EntryBody[] => [
  ...endsNamed(view, id),
  { kind: "EntryAmended", target: id, to: { kind: "PointReplayed" } },
];

export const putBack = (id: string): EntryBody => ({ kind: "EntryRestored", target: id });
