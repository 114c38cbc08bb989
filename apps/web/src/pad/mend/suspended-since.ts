import type { MatchView } from "@courtloom/match-log";

/** The phone's own time of day when play was suspended, as it was charted; undefined when it is not. */
export const suspendedSince = (view: MatchView): string | undefined => {
  const fact = view.trail.facts.findLast((each) => each.fact.kind === "PlaySuspended" && !each.voided);
  if (!view.suspended || !fact) return undefined;
  return new Date(fact.wallMs).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
};
