import type { LaneRecord } from "@courtloom/sync";

/** Which lane this phone charted a match in; kept apart from the lanes, so that their loss is noticed. */
export interface ChartedMark {
  readonly matchId: string;
  readonly laneId: string;
}

const KEY = "courtloom-charted-1";
const MOST = 12;

const isMark = (value: unknown): value is ChartedMark =>
  typeof value === "object" &&
  value !== null &&
  typeof (value as Partial<ChartedMark>).matchId === "string" &&
  typeof (value as Partial<ChartedMark>).laneId === "string";

/** What was stored, newest first; nothing when it is not what this page stores. */
export const parseMarks = (stored: string | null): readonly ChartedMark[] => {
  if (stored === null) return [];
  try {
    const raw: unknown = JSON.parse(stored);
    return Array.isArray(raw) ? raw.filter(isMark) : [];
  } catch {
    // Cut off, or written by something else: nothing is known of earlier lanes.
    return [];
  }
};

export const readMarks = (): readonly ChartedMark[] => {
  try {
    return parseMarks(localStorage.getItem(KEY));
  } catch {
    // The browser forbids storage; a loss is then told by the server alone.
    return [];
  }
};

/** Remembers that this phone charts in a lane. Answers whether it could. */
export const markCharted = ({ matchId, laneId }: LaneRecord): boolean => {
  const others = readMarks().filter((mark) => mark.matchId !== matchId);
  try {
    localStorage.setItem(KEY, JSON.stringify([{ matchId, laneId }, ...others].slice(0, MOST)));
    return true;
  } catch {
    return false;
  }
};

/** True when this phone charted the match in a lane that it no longer holds. SPEC PD43. */
export const isCopyGone = (
  marks: readonly ChartedMark[],
  matchId: string,
  lanes: readonly Pick<LaneRecord, "laneId">[],
): boolean => {
  const mark = marks.find((each) => each.matchId === matchId);
  return mark !== undefined && !lanes.some(({ laneId }) => laneId === mark.laneId);
};
