import { COURT } from "./court.ts";

export const CHANNELS = ["left", "middle", "right"] as const;

/** A third of the court's width, by the striker's own left and right. */
export type Channel = (typeof CHANNELS)[number];

/** The channel at `x` metres to the right of the middle; outside the court the nearest. SPEC G5. */
export function channelAt(x: number): Channel {
  if (Math.abs(x) < COURT.sideFrom) return "middle";
  return x < 0 ? "left" : "right";
}

const OPPOSITE: Readonly<Record<Channel, Channel>> = { left: "right", middle: "middle", right: "left" };

/** The same channel as the player across the net names it. */
export const acrossNet = (channel: Channel): Channel => OPPOSITE[channel];
