import { err, ok, type Result, type Side } from "@courtloom/core";
import type { Fact } from "@courtloom/match-log";

type Stated = Extract<Fact, { kind: "ScoreStated" }>;

/** What a person typed of a score, as text. Empty parts stay as they are in the match. */
export interface TypedScore {
  /** Finished sets, side A first: "6-4 6-7(5) [10-8]", with the loser's tie-break points and a match tie-break. */
  readonly sets: string;
  readonly games: Readonly<Record<Side, string>>;
  readonly points: Readonly<Record<Side, string>>;
  readonly server: Side | "";
  /** Points were played that nobody charted. */
  readonly missed: boolean;
}

type Sets = NonNullable<Stated["score"]["sets"]>;

const SET = /^(\d{1,3})[-–:](\d{1,3})(?:\((\d{1,3})\))?$/;
const MATCH_TIE_BREAK = /^\[(\d{1,3})[-–:](\d{1,3})\]$/;

const readSet = (part: string): Sets[number] | undefined => {
  const decider = MATCH_TIE_BREAK.exec(part);
  if (decider) return [Number(decider[1]), Number(decider[2]), "MTB"];
  const found = SET.exec(part);
  if (!found) return undefined;
  const [a, b] = [Number(found[1]), Number(found[2])];
  return found[3] === undefined ? [a, b] : [a, b, Number(found[3])];
};

const readSets = (text: string): Result<Sets | undefined, string> => {
  const parts = text
    .trim()
    .split(/[\s,]+/)
    .filter(Boolean);
  const sets: Sets[number][] = [];
  for (const part of parts) {
    const set = readSet(part);
    if (!set)
      return err(
        `Sets: “${part}” is no set. Write finished sets like 6-4 6-7(5), a match tie-break like [10-8].`,
      );
    sets.push(set);
  }
  return ok(parts.length === 0 ? undefined : sets);
};

const CALLS: Readonly<Record<string, number>> = { "0": 0, "15": 1, "30": 2, "40": 3, ad: 4 };

/** Points as called (15, 30, 40, Ad) or as counted; in a tie-break they are counted. */
const readPoints = (
  [a, b]: readonly [string, string],
  isTieBreak: boolean,
): readonly [number, number] | undefined => {
  const called = [CALLS[a.toLowerCase()], CALLS[b.toLowerCase()]] as const;
  if (!isTieBreak && called[0] !== undefined && called[1] !== undefined) return [called[0], called[1]];
  return /^\d{1,3}$/.test(a) && /^\d{1,3}$/.test(b) ? [Number(a), Number(b)] : undefined;
};

interface PairReading {
  readonly name: "Games" | "Points";
  readonly isTieBreak: boolean;
}

const readPair = (
  { A, B }: Readonly<Record<Side, string>>,
  { name, isTieBreak }: PairReading,
): Result<readonly [number, number] | undefined, string> => {
  const written = [A.trim(), B.trim()] as const;
  if (written[0] === "" && written[1] === "") return ok(undefined);
  const read = readPoints(written, name === "Games" || isTieBreak);
  if (read) return ok(read);
  const how = name === "Games" ? "a whole number" : "0, 15, 30, 40 or Ad, or the tie-break’s number,";
  return err(`${name}: write ${how} for both players, or leave both empty.`);
};

/** A typed score as a fact, or a sentence that says what to write. Games start anew where only sets are given. SPEC PD83. */
export const readStatedScore = (typed: TypedScore, isTieBreak = false): Result<Stated, string> => {
  const sets = readSets(typed.sets);
  if (!sets.ok) return sets;
  const games = readPair(typed.games, { name: "Games", isTieBreak });
  if (!games.ok) return games;
  const points = readPair(typed.points, { name: "Points", isTieBreak });
  if (!points.ok) return points;
  const isEmpty = !sets.value && !games.value && !points.value && typed.server === "";
  if (isEmpty) return err("Nothing is stated yet. Write the sets, games or points as the players have them.");
  const gamesThen = games.value ?? (sets.value ? ([0, 0] as const) : undefined);
  const pointsThen = points.value ?? (gamesThen ? ([0, 0] as const) : undefined);
  return ok({
    kind: "ScoreStated",
    missed: typed.missed,
    score: {
      ...(sets.value ? { sets: sets.value } : {}),
      ...(gamesThen ? { games: gamesThen } : {}),
      ...(pointsThen ? { points: pointsThen } : {}),
      ...(typed.server === "" ? {} : { server: typed.server }),
    },
  });
};
