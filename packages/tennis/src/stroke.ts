import { type Channel, channelAt } from "./channel.ts";
import { type Contact, type Hand, readContact, type StrokeSide, strokeSideAt } from "./contact.ts";
import type { CourtPoint } from "./court.ts";
import { aimOf, type Direction, directionBetween, isDirectionCertain } from "./direction.ts";
import { type Ended, endedAt, isEndedCertain, type LandingDepth, landingDepth } from "./ended.ts";
import type { RawStroke } from "./raw-stroke.ts";
import { seenByStriker } from "./striker-view.ts";

/** Everything that the drawing of a stroke says, in the striker's own metres and words. */
export interface Stroke extends Contact {
  /** Where the drawing ends. */
  readonly to: CourtPoint;
  /** The channel it was sent to; `undefined` when the drawing has no direction. */
  readonly toChannel: Channel | undefined;
  readonly direction: Direction | undefined;
  readonly isDirectionCertain: boolean;
  readonly ended: Ended;
  readonly isEndedCertain: boolean;
  readonly landing: LandingDepth | undefined;
}

/** Reads a drawn stroke. Total: any two points give a stroke. SPEC G1 to G12. */
export function readStroke(raw: RawStroke, hand: Hand = "unknown"): Stroke {
  const contact = readContact(raw.from, raw, hand);
  const to = seenByStriker(raw.to, raw);
  const path = { from: contact.at, to };
  const aim = aimOf(path);
  const toChannel = aim && channelAt(aim.x);
  return {
    ...contact,
    to,
    toChannel,
    direction: toChannel && directionBetween(contact.channel, toChannel),
    isDirectionCertain: isDirectionCertain(path),
    ended: endedAt(to),
    isEndedCertain: isEndedCertain(to),
    landing: landingDepth(to),
  };
}

/**
 * The trade's name for a stroke hit from the other stroke's channel (a forehand from the backhand side, or
 * the reverse): inside-out when it goes cross-court, inside-in when it goes down the line. `strokeSide` is what
 * a person said. The choice stays what its direction is. SPEC G13.
 */
export function insideName(
  stroke: Pick<Stroke, "channel" | "direction">,
  strokeSide: StrokeSide,
  hand: Hand,
): "insideOut" | "insideIn" | undefined {
  const usual = strokeSideAt(stroke.channel, hand);
  if (usual === "unknown" || strokeSide === "unknown" || usual === strokeSide) return undefined;
  if (stroke.direction === "cross") return "insideOut";
  return stroke.direction === "line" ? "insideIn" : undefined;
}
