import { err, ok, type Result, SIDES } from "@courtloom/core";
import type { ScoreEvent } from "./score-event.ts";

/** Why something is no event. `member` is the path that is wrong. */
export interface EventError {
  readonly code: "bad_event";
  readonly member: string;
  readonly expected: string;
}

type Members = Readonly<Record<string, unknown>>;
type Rule = readonly [expected: string, holds: (value: unknown) => boolean];

const SIDE: Rule = ['"A" or "B"', (value) => SIDES.some((side) => side === value)];
const BOOLEAN: Rule = ["true or false", (value) => typeof value === "boolean"];
const COUNT: Rule = ["a whole number from 1", (value) => Number.isInteger(value) && Number(value) >= 1];
const NAMES: Rule = [
  "a list of names",
  (value) => Array.isArray(value) && value.every((name) => typeof name === "string"),
];
const PAIR: Rule = ["two whole numbers, [A, B]", (value) => Array.isArray(value) && isPair(value)];
const SETS: Rule = [
  'a list of [A, B], [A, B, loser\'s tie-break points] or [A, B, "MTB"]',
  (value) => Array.isArray(value) && value.every(isSet),
];
const UNFINISHED = ["ignored", "leaderGetsIt", "needsLeadOfTwo", "decidingPoint"];
const POLICY: Rule = [
  `an object whose unfinishedGame is one of ${UNFINISHED.join(", ")}`,
  (value) => isMembers(value) && UNFINISHED.some((name) => name === value.unfinishedGame),
];

const optional = ([expected, holds]: Rule): Rule => [
  expected,
  (value) => value === undefined || holds(value),
];

const POLICY_MEMBERS: Readonly<Record<string, Rule>> = {
  unfinishedGame: [UNFINISHED.join(" or "), () => true],
  drawAllowed: optional(BOOLEAN),
  gamesCounted: optional(['"set" or "match"', (value) => value === "set" || value === "match"]),
  pointsDecide: optional(BOOLEAN),
};

const EVENT_MEMBERS: Readonly<Record<ScoreEvent["type"], Readonly<Record<string, Rule>>>> = {
  point: { winner: SIDE },
  pointPenalty: { against: SIDE },
  gamePenalty: { against: SIDE },
  setScore: { sets: optional(SETS), games: optional(PAIR), points: optional(PAIR), server: optional(SIDE) },
  setServer: { to: SIDE },
  setOrder: { order: NAMES },
  undo: { n: COUNT },
  retire: { side: SIDE },
  default: { side: SIDE },
  walkover: { absent: SIDE },
  unplayed: {},
  timeUp: { policy: POLICY },
};

function isMembers(value: unknown): value is Members {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const isWhole = (value: unknown): boolean => Number.isInteger(value) && Number(value) >= 0;

const isPair = (value: readonly unknown[]): boolean => value.length === 2 && value.every(isWhole);

function isSet(value: unknown): boolean {
  if (!Array.isArray(value)) return false;
  if (value.length === 2) return isPair(value);
  return value.length === 3 && isPair(value.slice(0, 2)) && (value[2] === "MTB" || isWhole(value[2]));
}

/** Reads one event that came from outside: the shape only, not whether the score can take it. SPEC SC40. */
export function parseScoreEvent(value: unknown): Result<ScoreEvent, EventError> {
  if (!isMembers(value))
    return err({ code: "bad_event", member: "event", expected: "an object with a type" });
  const types = Object.keys(EVENT_MEMBERS);
  const type = types.find((name) => name === value.type) as ScoreEvent["type"] | undefined;
  if (type === undefined)
    return err({ code: "bad_event", member: "type", expected: `one of ${types.join(", ")}` });
  const { type: _, ...members } = value;
  const error =
    whyWrong("", members, EVENT_MEMBERS[type]) ??
    (isMembers(value.policy) ? whyWrong("policy.", value.policy, POLICY_MEMBERS) : undefined);
  if (error !== undefined) return err(error);
  // Every member was checked against the event's type above.
  return ok(value as unknown as ScoreEvent);
}

function whyWrong(
  path: string,
  members: Members,
  rules: Readonly<Record<string, Rule>>,
): EventError | undefined {
  for (const name of Object.keys(members)) {
    if (!Object.hasOwn(rules, name))
      return { code: "bad_event", member: `${path}${name}`, expected: "left out, as it is not known" };
  }
  for (const [name, [expected, holds]] of Object.entries(rules)) {
    if (!holds(members[name])) return { code: "bad_event", member: `${path}${name}`, expected };
  }
  return undefined;
}

/** A sentence for a person that says what to write instead. */
export const eventErrorText = (error: EventError): string => `${error.member} must be ${error.expected}`;
