import type { Serve } from "@courtloom/match-log";
import { ANY_LEVEL, type PointFigure } from "./figure-def.ts";
import type { PlayedPoint } from "./played-point.ts";

/** The serve of a point that the player served, if it was told. */
const ownServe = ({ isServing, serve }: PlayedPoint): Serve | undefined => (isServing ? serve : undefined);

const served = (hit: (serve: Serve, point: PlayedPoint) => boolean | undefined): PointFigure => ({
  unit: "points",
  levels: ANY_LEVEL,
  hit: (point) => {
    const serve = ownServe(point);
    return serve && hit(serve, point);
  },
});

/** The first serve was in, of points served. SPEC D32. */
export const firstServeIn: PointFigure = served(({ faults }) => faults === 0);
/** Points won, of those served with the first serve in. SPEC D32. */
export const wonOnFirst: PointFigure = served(({ faults }, { won }) => (faults === 0 ? won : undefined));
/** Points won, of those with a first serve out: a double fault is one of them. SPEC D32. */
export const wonOnSecond: PointFigure = served(({ faults }, { won }) => (faults > 0 ? won : undefined));
/** Aces, of points served. SPEC D32. */
export const aces: PointFigure = served(({ outcome }) => outcome === "ace");
/** Double faults, of points served. SPEC D32. */
export const doubleFaults: PointFigure = served(({ outcome }) => outcome === "doubleFault");

/** Points won, of those received whose serve was told; by the serve that counted. SPEC D32. */
export const returnWon: PointFigure = {
  unit: "points",
  levels: ANY_LEVEL,
  hit: ({ isServing, serve, won }) => (isServing || !serve ? undefined : won),
  part: ({ serve }) => (serve?.faults === 0 ? "first" : "second"),
};
