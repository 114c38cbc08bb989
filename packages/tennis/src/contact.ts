import { type Channel, channelAt } from "./channel.ts";
import { BASELINE, COURT, type CourtPoint } from "./court.ts";
import type { SeenPoint } from "./raw-stroke.ts";
import { seenByStriker, type View } from "./striker-view.ts";

export const DEPTHS_STRUCK = ["behindBaseline", "insideBaseline", "insideServiceLine"] as const;
export type DepthStruck = (typeof DEPTHS_STRUCK)[number];

export type Hand = "right" | "left" | "unknown";
export type StrokeSide = "forehand" | "backhand" | "unknown";

/** Where a ball was struck; all that a touch without a drawn path can say. */
export interface Contact {
  readonly at: CourtPoint;
  readonly channel: Channel;
  readonly depthStruck: DepthStruck;
  /** The side that the place suggests: a guess until a person says otherwise. */
  readonly strokeSide: StrokeSide;
}

/** SPEC G10. On a line is not inside it. */
export function depthStruckAt(y: number): DepthStruck {
  if (y <= -BASELINE) return "behindBaseline";
  return y <= -COURT.serviceLine ? "insideBaseline" : "insideServiceLine";
}

const FOREHAND_CHANNEL: Readonly<Record<Hand, Channel | undefined>> = {
  right: "right",
  left: "left",
  unknown: undefined,
};

/** SPEC G11. Unknown from the middle, and for a player whose hand is not known. */
export function strokeSideAt(channel: Channel, hand: Hand): StrokeSide {
  const forehand = FOREHAND_CHANNEL[hand];
  if (forehand === undefined || channel === "middle") return "unknown";
  return channel === forehand ? "forehand" : "backhand";
}

export function readContact(from: SeenPoint, view: View, hand: Hand): Contact {
  const at = seenByStriker(from, view);
  const channel = channelAt(at.x);
  return { at, channel, depthStruck: depthStruckAt(at.y), strokeSide: strokeSideAt(channel, hand) };
}
