import { CHARTING_LEVELS } from "@courtloom/match-log";
import type { HandOverAsk, HandOverLane } from "../../pad/hand-over/hand-over-wire.ts";

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/i;

const isUuid = (value: unknown): value is string => typeof value === "string" && UUID.test(value);

/** An object with exactly these members; undefined for anything else. */
const membersOf = (text: string, members: string): Record<string, unknown> | undefined => {
  try {
    const body: unknown = JSON.parse(text);
    const fits = typeof body === "object" && body !== null && Object.keys(body).sort().join() === members;
    return fits ? (body as Record<string, unknown>) : undefined;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
};

/** The body that asks for a code; undefined for anything else, unknown members included. */
export const parseHandOverAsk = (text: string): HandOverAsk | undefined => {
  const { matchId, laneId, level: said } = membersOf(text, "laneId,level,matchId") ?? {};
  const level = CHARTING_LEVELS.find((each) => each === said);
  return isUuid(matchId) && isUuid(laneId) && level ? { matchId, laneId, level } : undefined;
};

/** The body that withdraws codes. */
export const parseHandOverLane = (text: string): HandOverLane | undefined => {
  const { matchId, laneId } = membersOf(text, "laneId,matchId") ?? {};
  return isUuid(matchId) && isUuid(laneId) ? { matchId, laneId } : undefined;
};
