export const RALLY_PHASES = ["opening", "building", "long"] as const;
/** How far a rally is, the serve counted: strokes 1 to 4, 5 to 8, from 9. */
export type RallyPhase = (typeof RALLY_PHASES)[number];

/** The phase of the stroke with this number; the serve is number 1. SPEC D12. */
export const rallyPhase = (stroke: number): RallyPhase =>
  stroke <= 4 ? "opening" : stroke <= 8 ? "building" : "long";
