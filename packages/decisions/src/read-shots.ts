import { type ByPlayer, otherSide } from "@courtloom/core";
import type { Point, Shot } from "@courtloom/match-log";
import {
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
  /** `undefined` for a touch: its place is known and its direction is not. */
  readonly stroke: Stroke | undefined;
  /** Ended net, wide or long. */
  readonly missed: boolean;
}

interface Earlier {
  readonly depthStruck: Stroke["depthStruck"];
  readonly kind: StrokeKind;
  readonly to?: Stroke["to"];
}

/**
 * Reads the shots of a point in order. Works from the raw drawing each time, so a mended end or hand
 * changes everything that follows from it. SPEC D1.
 */
export const readShots = (point: Point, hands: ByPlayer<Hand>): ReadShot[] => {
  const last: { A?: Earlier; B?: Earlier } = {};
  return point.shots.map((shot, i) => {
    const view = { seat: point.seat, endOfA: point.endOfA, striker: shot.striker };
    const hand = hands[shot.striker];
    const stroke = shot.to && readStroke({ ...view, from: shot.from, to: shot.to }, hand);
    const contact = stroke ?? readContact(shot.from, view, hand);
    const kind =
      shot.kind ??
      defaultKind({
        isFirstAfterServe: i === 0 && point.serve !== undefined,
        contact,
        ownPrevious: last[shot.striker],
        incoming: last[otherSide(shot.striker)],
        cameIn: shot.cameIn,
      });
    last[shot.striker] = { depthStruck: contact.depthStruck, kind, ...(stroke ? { to: stroke.to } : {}) };
    return { shot, kind, stroke, missed: shot.result === "missed" || shot.miss !== undefined };
  });
};
