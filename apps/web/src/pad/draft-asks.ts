import { byPlayer, type Side } from "@courtloom/core";
import { type ReadShot, readShots } from "@courtloom/decisions";
import type { Ask, Shot, ShotAsks } from "@courtloom/match-log";
import { readContact } from "@courtloom/tennis";
import type { Opened } from "./draft-reducer.ts";
import type { PointDraft, PointFrame } from "./point-draft.ts";
import { endingOf } from "./read-draft.ts";

/** What a match asks, and of whose balls. */
export interface Asking {
  /** Frozen when the match opened; absent asks nothing. */
  readonly asks: ShotAsks | undefined;
  readonly subjects: readonly Side[];
}

/** Balls that are met in the air answer no short ball. */
const IN_THE_AIR: readonly ReadShot["kind"][] = ["volley", "overhead"];

const isLine = ({ kind, stroke }: ReadShot): boolean =>
  kind === "groundstroke" && stroke?.direction === "line";

const isShort = ({ kind, shot }: ReadShot, frame: PointFrame): boolean => {
  const { depthStruck } = readContact(shot.from, { ...frame, striker: shot.striker }, "unknown");
  return depthStruck === "insideServiceLine" && !IN_THE_AIR.includes(kind);
};

/**
 * What is asked of each ball of a draft, in order; nothing of most. Of a charted player's line balls and balls
 * struck inside the service line, each question once. SPEC PD27.
 */
export const asksOfDraft = (
  draft: PointDraft,
  frame: PointFrame,
  { asks, subjects }: Asking,
): readonly (readonly Ask[])[] => {
  if (!asks) return draft.shots.map(() => []);
  const { server, seat, endOfA } = frame;
  const hands = byPlayer(() => "unknown" as const);
  return readShots({ server, point: { seat, endOfA, shots: draft.shots } }, hands).map((read) => {
    if (!subjects.includes(read.shot.striker)) return [];
    const asked = [...(isLine(read) ? asks.line : []), ...(isShort(read, frame) ? asks.short : [])];
    return [...new Set(asked)];
  });
};

/** Questions about a ball that nobody answered yet. */
export const openAsks = (shot: Shot, asks: readonly Ask[]): number =>
  asks.filter((ask) => shot[ask] === undefined).length;

/**
 * The ball whose questions are on screen: the one that a person opened; else, once the point has ended, the
 * newest that asks. While the rally may go on nothing opens by itself, so nothing costs a touch. SPEC PD28.
 */
export const askedPlace = (
  draft: PointDraft,
  frame: PointFrame,
  opened: Opened | undefined,
  asks: readonly (readonly Ask[])[],
): number | undefined => {
  if (opened !== undefined) return opened === "serve" ? undefined : opened;
  if (!endingOf(draft, frame)) return undefined;
  const newest = asks.findLastIndex((each) => each.length > 0);
  return newest < 0 ? undefined : newest;
};
