import { err, ok, type Result, SIDES, type Side } from "@courtloom/core";
import {
  applyScore,
  eventErrorText,
  type FinishedSet,
  formatErrorText,
  type MatchFormat,
  type MatchStatus,
  parseFormat,
  parseScoreEvent,
  type ScoreEvent,
  type ScoreSetup,
  type ScoreState,
  scoreErrorText,
  startScore,
} from "@courtloom/tennis";

/** What is written for one match. */
export interface ScoredRecord {
  readonly id: string | number | null;
  /** The state after the last event; the state before the first point when there is none. */
  readonly final: ScoreState;
  /** The finished sets only. */
  readonly finalScore: readonly FinishedSet[];
  /** What was under way when the match ended early or the events stopped; absent when nothing was. */
  readonly unfinished?: Pick<ScoreState, "games" | "points">;
  readonly winner: Side | null;
  readonly status: MatchStatus;
  /** One state after each event. */
  readonly states?: readonly ScoreState[];
}

export interface RefusedRecord {
  readonly id: string | number | null;
  /** Counted from 1, empty lines included. */
  readonly line: number;
  readonly error: string;
}

type Members = Readonly<Record<string, unknown>>;

/** Scores the match on one line of JSON; whatever is wrong with it becomes a sentence. */
export function scoreRecord(text: string, line: number, withStates: boolean): ScoredRecord | RefusedRecord {
  const record = parseRecord(text);
  if (!record.ok) return { id: null, line, error: record.error };
  const id = idOf(record.value);
  const played = playRecord(record.value);
  return played.ok ? describe(id, played.value, withStates) : { id, line, error: played.error };
}

function parseRecord(text: string): Result<Members, string> {
  try {
    const value: unknown = JSON.parse(text);
    if (isMembers(value)) return ok(value);
    return err("the line must be a JSON object with format, firstServer, and events or points");
  } catch (error) {
    return err(`the line is not JSON: ${error instanceof Error ? error.message : String(error)}`);
  }
}

function isMembers(value: unknown): value is Members {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const idOf = ({ id }: Members): string | number | null =>
  typeof id === "string" || typeof id === "number" ? id : null;

interface Played {
  readonly final: ScoreState;
  /** After each event. */
  readonly states: readonly ScoreState[];
}

function playRecord(record: Members): Result<Played, string> {
  const setup = readSetup(record);
  if (!setup.ok) return setup;
  const events = readEvents(record);
  if (!events.ok) return events;
  const start = startScore(setup.value);
  if (!start.ok) return err(formatErrorText(start.error));
  const states: ScoreState[] = [];
  let board = start.value;
  for (const [index, event] of events.value.entries()) {
    const next = applyScore(board, event);
    if (!next.ok) return err(`event ${index + 1}: ${scoreErrorText(next.error)}`);
    board = next.value;
    states.push(board.state);
  }
  return ok({ final: board.state, states });
}

function readSetup(record: Members): Result<ScoreSetup, string> {
  const format: Result<MatchFormat, string> = readFormat(record.format);
  if (!format.ok) return format;
  const firstServer = SIDES.find((side) => side === record.firstServer);
  if (firstServer === undefined) return err('firstServer must be "A" or "B"');
  const { doublesOrder } = record;
  if (doublesOrder === undefined || doublesOrder === null) return ok({ format: format.value, firstServer });
  if (!Array.isArray(doublesOrder) || !doublesOrder.every((name) => typeof name === "string"))
    return err("doublesOrder must be a list of four names");
  return ok({ format: format.value, firstServer, doublesOrder });
}

function readFormat(value: unknown): Result<MatchFormat, string> {
  const format = parseFormat(value);
  return format.ok ? format : err(formatErrorText(format.error));
}

function readEvents({ events, points }: Members): Result<readonly ScoreEvent[], string> {
  if (events !== undefined && points !== undefined) return err("give events or points, not both");
  if (typeof points === "string") return readPoints(points);
  if (points !== undefined) return err('points must be a string of the letters A and B, like "AABA"');
  if (!Array.isArray(events)) return err("events must be a list, or points a string of the letters A and B");
  const read: ScoreEvent[] = [];
  for (const [index, value] of events.entries()) {
    const event = parseScoreEvent(value);
    if (!event.ok) return err(`event ${index + 1}: ${eventErrorText(event.error)}`);
    read.push(event.value);
  }
  return ok(read);
}

function readPoints(points: string): Result<readonly ScoreEvent[], string> {
  const read: ScoreEvent[] = [];
  for (const [index, letter] of [...points].entries()) {
    if (letter !== "A" && letter !== "B")
      return err(
        `points: letter ${index + 1} is ${JSON.stringify(letter)}; write A or B for who won the point`,
      );
    read.push({ type: "point", winner: letter });
  }
  return ok(read);
}

function describe(id: string | number | null, played: Played, withStates: boolean): ScoredRecord {
  const { final, states } = played;
  const { games, points, winner, status } = final;
  const isUnfinished = [...games, ...points].some((count) => count > 0);
  return {
    id,
    final,
    finalScore: final.sets,
    ...(isUnfinished ? { unfinished: { games, points } } : {}),
    winner,
    status,
    ...(withStates ? { states } : {}),
  };
}
