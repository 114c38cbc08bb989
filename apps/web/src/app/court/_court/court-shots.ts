import { byPlayer, type Side } from "@courtloom/core";
import { countedShots, type ReadShot, readShots } from "@courtloom/decisions";
import type { MatchView, ViewedPoint } from "@courtloom/match-log";
import { type CourtPoint, type Direction, readContact } from "@courtloom/tennis";
import type { PlannedShot } from "../../../loom/court-drawing.tsx";

/** A shot of a match: where it was struck, what became of it and in which point. */
export interface CourtShot extends PlannedShot {
  /** Id of the entry that charted its point. */
  readonly pointId: string;
  readonly side: Side;
  readonly read: ReadShot;
  /** The line figures count it. */
  readonly counted: boolean;
}

const placed = (viewed: ViewedPoint, read: ReadShot, hand: "right" | "left" | "unknown"): CourtPoint =>
  (
    read.stroke ??
    readContact(
      read.shot.from,
      { seat: viewed.point.seat, endOfA: viewed.point.endOfA, striker: read.shot.striker },
      hand,
    )
  ).at;

/** Every shot that was charted, in order. Empty at the level that charts none. */
export const shotsOf = (view: MatchView): readonly CourtShot[] => {
  const hands = byPlayer((side) => view.opened.players[side].hand);
  return view.points.flatMap((viewed) => {
    const counted = new Set(countedShots(viewed, hands).map(({ place }) => place));
    return readShots(viewed, hands).map((read, i) => ({
      key: `${viewed.id} ${i}`,
      pointId: viewed.id,
      side: read.shot.striker,
      read,
      counted: counted.has(i),
      from: placed(viewed, read, hands[read.shot.striker]),
      to: read.stroke?.to,
      direction: read.stroke?.direction,
      missed: read.missed,
    }));
  });
};

export const FIGURE_NAMES = ["lineMissed", "lineShare"] as const;
/** A figure that has shots behind it. */
export type FigureName = (typeof FIGURE_NAMES)[number];

/** A player's figure that somebody wants to see the points of. */
export interface ChosenFigure {
  readonly side: Side;
  readonly figure: FigureName;
}

/** Does a figure stand on this shot? The same balls as the figure counts. */
const countsFor = (figure: FigureName, { counted, direction }: CourtShot): boolean =>
  counted && (figure === "lineShare" || direction === "line");

/** The shots that a figure stands on, in order; as many as its n. */
export const shotsBehind = (
  shots: readonly CourtShot[],
  { side, figure }: ChosenFigure,
): readonly CourtShot[] => shots.filter((shot) => shot.side === side && countsFor(figure, shot));

export const DIRECTION_CHOICES = ["all", "line", "cross", "middle"] as const;
export type DirectionChoice = (typeof DIRECTION_CHOICES)[number];

export interface ShotFilter {
  readonly side: Side | "both";
  readonly direction: DirectionChoice;
  readonly missedOnly: boolean;
}

const GOES: Readonly<Record<DirectionChoice, readonly (Direction | undefined)[]>> = {
  all: ["line", "cross", "middle", "fromMiddle", undefined],
  line: ["line"],
  cross: ["cross"],
  middle: ["middle", "fromMiddle"],
};

export const filterShots = (shots: readonly CourtShot[], filter: ShotFilter): readonly CourtShot[] =>
  shots.filter(
    (shot) =>
      (filter.side === "both" || shot.side === filter.side) &&
      GOES[filter.direction].includes(shot.direction) &&
      (shot.missed || !filter.missedOnly),
  );
