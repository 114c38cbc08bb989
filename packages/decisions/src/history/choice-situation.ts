import { DEPTHS_STRUCK, type DepthStruck } from "@courtloom/tennis";

/** How deep the ball that was answered came down; `undefined`: not known. */
export type KnownLanding = "short" | "mid" | "deep" | undefined;

/** What was known before a ball that could go down the line: where it was struck, and what was answered. */
export interface ChoiceSituation {
  readonly depth: DepthStruck;
  readonly side: "left" | "right";
  readonly landing: KnownLanding;
}

const SIDES_OF_COURT = ["left", "right"] as const;
const LANDINGS: readonly KnownLanding[] = ["short", "mid", "deep", undefined];

/** The 24 situations that worths are fitted for, in the order of the fit. From the middle there is no line. SPEC HF11. */
export const CHOICE_SITUATIONS: readonly ChoiceSituation[] = DEPTHS_STRUCK.flatMap((depth) =>
  SIDES_OF_COURT.flatMap((side) => LANDINGS.map((landing) => ({ depth, side, landing }))),
);

const keyOf = ({
  depth,
  side,
  landing,
}: Pick<ChoiceSituation, "depth" | "landing"> & { readonly side: string }) =>
  `${depth} ${side} ${landing ?? ""}`;

const PLACES = new Map(CHOICE_SITUATIONS.map((situation, place) => [keyOf(situation), place]));

/** Place of a situation in `CHOICE_SITUATIONS`; `undefined` from the middle. */
export const choiceSituationAt = (
  depth: DepthStruck,
  side: string,
  landing: KnownLanding | "unknown",
): number | undefined =>
  PLACES.get(keyOf({ depth, side, landing: landing === "unknown" ? undefined : landing }));
