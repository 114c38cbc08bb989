import type { Seat, SeenPoint } from "@courtloom/tennis";

/** A place on the drawn court in CSS pixels from the drawing's top left corner. */
export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

/**
 * The perspective of one drawing, as five numbers. With s = 1 / (away + distance):
 * x = middle + spread · right · s and y = horizon + drop · s. All lengths on the court in centimetres.
 */
export interface CourtMap {
  readonly seat: Seat;
  readonly distance: number;
  readonly middle: number;
  readonly spread: number;
  readonly horizon: number;
  readonly drop: number;
}

interface Frame {
  /** Half the court across the screen and up the screen. */
  readonly halfRight: number;
  readonly halfAway: number;
  /** Ground shown beyond the near and the far line. */
  readonly nearRoom: number;
  readonly farRoom: number;
  /** How much wider the near line is drawn than the far one. */
  readonly narrowing: number;
  /** Half the near line's width as a share of the drawing's width. */
  readonly share: number;
  /** The widest that the court may be drawn for its height, so that a wide screen does not flatten it. */
  readonly widest: number;
}

const FRAMES: Readonly<Record<Seat, Frame>> = {
  behind: {
    halfRight: 411.5,
    halfAway: 1188.5,
    nearRoom: 330,
    farRoom: 330,
    narrowing: 1.36,
    share: 0.355,
    widest: 0.75,
  },
  side: {
    halfRight: 1188.5,
    halfAway: 411.5,
    nearRoom: 170,
    farRoom: 190,
    narrowing: 1.22,
    share: 0.4,
    widest: 0.86,
  },
};

/** The perspective for a drawing of `width` × `height` CSS pixels, both above 0, from a seat. */
export const makeCourtMap = (seat: Seat, width: number, height: number): CourtMap => {
  const { halfRight, halfAway, nearRoom, farRoom, narrowing, share, widest } = FRAMES[seat];
  const distance = (halfAway * (narrowing + 1)) / (narrowing - 1);
  const nearest = 1 / (distance - halfAway - nearRoom);
  const farthest = 1 / (distance + halfAway + farRoom);
  const drop = height / (nearest - farthest);
  const halfWidth = Math.min(width * share, height * widest);
  return {
    seat,
    distance,
    middle: width / 2,
    spread: (halfWidth * (distance - halfAway)) / halfRight,
    horizon: height - drop * nearest,
    drop,
  };
};

export const toScreen = (map: CourtMap, { right, away }: SeenPoint): ScreenPoint => {
  const s = 1 / (away + map.distance);
  return { x: map.middle + map.spread * right * s, y: map.horizon + map.drop * s };
};

const FARTHEST_CM = 3000;
const within = (cm: number) => Math.max(-FARTHEST_CM, Math.min(FARTHEST_CM, Math.round(cm))) + 0;

/** The inverse of `toScreen`, to the whole centimetre; a finger beyond the drawing counts as 30 m away at most. */
export const toCourt = (map: CourtMap, { x, y }: ScreenPoint): SeenPoint => {
  const s = Math.max((y - map.horizon) / map.drop, 1 / (FARTHEST_CM + map.distance));
  return { right: within((x - map.middle) / (map.spread * s)), away: within(1 / s - map.distance) };
};
