import { type ByPlayer, otherSide, type Side } from "@courtloom/core";
import type { Shot, ViewedPoint } from "@courtloom/match-log";
import {
  type Contact,
  defaultKind,
  type Hand,
  readContact,
  readStroke,
  type Stroke,
  type StrokeKind,
} from "@courtloom/tennis";

/** A charted shot with what its place and order say of it. */
export interface ReadShot {
  readonly shot: Shot;
  /** What a person said, else what place and order suggest. */
  readonly kind: StrokeKind;
  /** Where it was struck. */
  readonly contact: Contact;
  /** `undefined` for a touch: its place is known and its direction is not. */
  readonly stroke: Stroke | undefined;
  /** Ended net, wide or long. */
  readonly missed: boolean;
}

interface Earlier {
  readonly striker: Side;
  readonly depthStruck: Stroke["depthStruck"];
  readonly kind: StrokeKind;
  readonly to?: Stroke["to"];
}

/** What the shots of a point are read by. A point of a view is one. */
export interface ShotsToRead extends Pick<ViewedPoint, "server"> {
  readonly point: Pick<ViewedPoint["point"], "seat" | "endOfA" | "shots">;
}

/**
 * Reads the shots of a point in order. Works from the raw drawing each time, so a mended end or hand
 * changes everything that follows from it. The first ball is a return when the receiver struck it; a ball
 * answers the one charted just before it, if that is the opponent's: at key balls most are not charted. SPEC D1, D9.
 */
export const readShots = ({ point, server }: ShotsToRead, hands: ByPlayer<Hand>): ReadShot[] => {
  const own: { A?: Earlier; B?: Earlier } = {};
  let before: Earlier | undefined;
  return point.shots.map((shot, i) => {
    const { striker } = shot;
    const view = { seat: point.seat, endOfA: point.endOfA, striker };
    const hand = hands[striker];
    const stroke = shot.to && readStroke({ ...view, from: shot.from, to: shot.to }, hand);
    const contact = stroke ?? readContact(shot.from, view, hand);
    const kind =
      shot.kind ??
      defaultKind({
        isFirstAfterServe: i === 0 && striker === otherSide(server),
        contact,
        ownPrevious: own[striker],
        incoming: before?.striker === striker ? undefined : before,
        cameIn: shot.cameIn,
      });
    const { depthStruck } = contact;
    before = { striker, depthStruck, kind, ...(stroke ? { to: stroke.to } : {}) };
    own[striker] = before;
    return { shot, kind, contact, stroke, missed: shot.result === "missed" || shot.miss !== undefined };
  });
};
