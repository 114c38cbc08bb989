export const SURFACES = ["hard", "clay", "grass", "artificialGrass", "carpet"] as const;
/** What a court is made of. Not known is absence, never a value of its own. */
export type Surface = (typeof SURFACES)[number];
