import type { LineSpot } from "@courtloom/api";

/** A place of the map as an address and a figure's parts name it: "behindBaseline.left". */
export const spotName = ({ depth, side }: Pick<LineSpot, "depth" | "side">): string => `${depth}.${side}`;
