import type { Contact } from "./contact.ts";
import { type CourtPoint, JITTER } from "./court.ts";

export const STROKE_KINDS = [
  "groundstroke",
  "return",
  "approach",
  "passing",
  "volley",
  "overhead",
  "lob",
  "drop",
] as const;
export type StrokeKind = (typeof STROKE_KINDS)[number];

/** What is known of a shot when its kind is guessed. `incoming` is in its own striker's metres. */
export interface ShotOrder {
  readonly isFirstAfterServe: boolean;
  readonly contact: Pick<Contact, "at" | "depthStruck">;
  /** The striker's own shot before this one in the point. */
  readonly ownPrevious?: EarlierShot | undefined;
  /** The opponent's shot that this one answers. */
  readonly incoming?: EarlierShot | undefined;
  /** The chartist said that the player came in behind it. */
  readonly cameIn?: boolean | undefined;
}

export interface EarlierShot {
  readonly depthStruck: Contact["depthStruck"];
  readonly kind?: StrokeKind | undefined;
  readonly to?: CourtPoint | undefined;
}

const NET_KINDS: readonly (StrokeKind | undefined)[] = ["approach", "volley", "overhead"];

/** The kind that place and order suggest, until a person mends it. The first line that fits holds. SPEC G15. */
export function defaultKind(shot: ShotOrder): StrokeKind {
  if (shot.isFirstAfterServe) return "return";
  if (isVolley(shot)) return "volley";
  if (isOpponentAtNet(shot)) return "passing";
  return shot.cameIn === true ? "approach" : "groundstroke";
}

function isVolley(shot: ShotOrder): boolean {
  if (shot.contact.depthStruck !== "insideServiceLine") return false;
  const { ownPrevious } = shot;
  const wasIn = ownPrevious?.depthStruck === "insideServiceLine" || NET_KINDS.includes(ownPrevious?.kind);
  return wasIn || isStruckBeforeBounce(shot);
}

/** The incoming ball was drawn to come down clearly behind the place where it was met. */
function isStruckBeforeBounce({ contact, incoming }: ShotOrder): boolean {
  return incoming?.to !== undefined && incoming.to.y > 0 - contact.at.y + JITTER;
}

const isOpponentAtNet = ({ incoming }: ShotOrder): boolean =>
  incoming !== undefined &&
  (NET_KINDS.includes(incoming.kind) ||
    (incoming.depthStruck === "insideServiceLine" && incoming.kind !== "drop"));
