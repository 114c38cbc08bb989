import { err, ok, type Result } from "@courtloom/core";
import { type FinalSet, type MatchFormat, TIEBREAK_ENDS, TIEBREAK_SERVES } from "./format.ts";
import type { FormatError } from "./format-error.ts";

type Members = Readonly<Record<string, unknown>>;

interface Check {
  readonly expected: string;
  readonly holds: (value: unknown) => boolean;
}

const MAX_COUNT = 200;

const isWhole = (value: unknown, least: number): boolean =>
  Number.isInteger(value) && Number(value) >= least && Number(value) <= MAX_COUNT;

const whole = (least: number): Check => ({
  expected: `a whole number from ${least} to ${MAX_COUNT}`,
  holds: (value) => isWhole(value, least),
});

const oneOf = (values: readonly unknown[]): Check => ({
  expected: `one of ${values.map((value) => JSON.stringify(value)).join(", ")}`,
  holds: (value) => values.includes(value),
});

const anyObject: Check = { expected: "an object", holds: (value) => isMembers(value) };

const REQUIRED: Readonly<Record<string, Check>> = {
  sets: oneOf([1, 3, 5]),
  gamesPerSet: whole(1),
  tiebreakAt: {
    expected: `a whole number from 1 to ${MAX_COUNT}, or null for a set without a tie-break`,
    holds: (value) => value === null || isWhole(value, 1),
  },
  tiebreakTo: whole(1),
  noAd: {
    expected: `true, false, or the whole number (1 to ${MAX_COUNT}) of the deuce that is decided by one point`,
    holds: (value) => typeof value === "boolean" || isWhole(value, 1),
  },
  finalSet: anyObject,
};

const OPTIONAL: Readonly<Record<string, Check>> = {
  tiebreakWinBy: oneOf([1, 2]),
  tbEnds: oneOf(TIEBREAK_ENDS),
  tbServe: oneOf(TIEBREAK_SERVES),
  matchTiebreakEnds: oneOf(TIEBREAK_ENDS),
  matchTiebreakServe: oneOf(TIEBREAK_SERVES),
  tieBreakOnly: anyObject,
  gameLead: oneOf([1, 2]),
  fixedGames: whole(1),
  ends: oneOf(["oddGames", "setEnds"]),
  noLet: oneOf([true, false]),
};

const FINAL_SET_MEMBERS: Readonly<Record<FinalSet["kind"], Readonly<Record<string, Check>>>> = {
  same: {},
  advantage: {},
  tiebreak: { tiebreakAt: whole(1), tiebreakTo: whole(1) },
  matchTiebreak: { to: whole(1) },
};

function isMembers(value: unknown): value is Members {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/**
 * Reads a format that came from outside (a file, a form, an older log). Every setting without a default
 * must be there and none may be unknown, so that a slip of the pen never becomes another rule. SPEC F1, F2.
 */
export function parseFormat(value: unknown): Result<MatchFormat, FormatError> {
  if (!isMembers(value)) return err({ code: "not_an_object", member: "format" });
  const error =
    checkMembers("", value, REQUIRED, OPTIONAL) ??
    checkFinalSet(value.finalSet) ??
    checkTiebreakOnly(value.tieBreakOnly) ??
    checkFixedGames(value);
  if (error !== undefined) return err(error);
  // Every member was checked against MatchFormat above.
  return ok(value as unknown as MatchFormat);
}

function checkMembers(
  path: string,
  members: Members,
  required: Readonly<Record<string, Check>>,
  optional: Readonly<Record<string, Check>>,
): FormatError | undefined {
  const checks: Readonly<Record<string, Check>> = { ...required, ...optional };
  for (const name of Object.keys(members)) {
    if (!Object.hasOwn(checks, name))
      return { code: "unknown_member", member: `${path}${name}`, known: Object.keys(checks) };
  }
  for (const [name, check] of Object.entries(checks)) {
    const error = checkMember(`${path}${name}`, members[name], check, Object.hasOwn(required, name));
    if (error !== undefined) return error;
  }
  return undefined;
}

function checkMember(
  member: string,
  value: unknown,
  check: Check,
  isRequired: boolean,
): FormatError | undefined {
  if (value === undefined)
    return isRequired ? { code: "missing_member", member, expected: check.expected } : undefined;
  return check.holds(value)
    ? undefined
    : { code: "bad_member", member, expected: check.expected, got: value };
}

function checkFinalSet(value: unknown): FormatError | undefined {
  if (!isMembers(value)) return { code: "not_an_object", member: "finalSet" };
  const kinds = Object.keys(FINAL_SET_MEMBERS);
  const kind = kinds.find((name) => name === value.kind) as FinalSet["kind"] | undefined;
  if (kind === undefined)
    return {
      code: "bad_member",
      member: "finalSet.kind",
      expected: `one of ${kinds.join(", ")}`,
      got: value.kind,
    };
  const own = FINAL_SET_MEMBERS[kind];
  const hasTiebreak = Object.keys(own).length > 0;
  return checkMembers(
    "finalSet.",
    value,
    { kind: oneOf(kinds), ...own },
    hasTiebreak ? { winBy: oneOf([1, 2]) } : {},
  );
}

function checkTiebreakOnly(value: unknown): FormatError | undefined {
  if (value === undefined) return undefined;
  if (!isMembers(value)) return { code: "not_an_object", member: "tieBreakOnly" };
  return checkMembers("tieBreakOnly.", value, { to: whole(1) }, { winBy: oneOf([1, 2]) });
}

/** An even number of games can end level: only a tie-break at half of them decides such a set. */
function checkFixedGames(value: Members): FormatError | undefined {
  const { fixedGames, tiebreakAt } = value;
  if (typeof fixedGames !== "number" || fixedGames % 2 === 1 || tiebreakAt === fixedGames / 2)
    return undefined;
  return {
    code: "bad_member",
    member: "fixedGames",
    expected: `odd, or even with tiebreakAt ${fixedGames / 2}`,
    got: fixedGames,
  };
}
