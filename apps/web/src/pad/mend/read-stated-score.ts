import { err, ok, type Result, type Side } from "@courtloom/core";
import type { Fact } from "@courtloom/match-log";

type Stated = Extract<Fact, { kind: "ScoreStated" }>;

/** What a person typed of a score, as text. Empty parts stay as they are in the match. */
export interface TypedScore {
  /** Finished sets, side A first: "6-4 3-6 7-6". */
  readonly sets: string;
  readonly games: Readonly<Record<Side, string>>;
  readonly points: Readonly<Record<Side, string>>;
  readonly server: Side | "";
  /** Points were played that nobody charted. */
  readonly missed: boolean;
}

const SET = /^(\d{1,3})[-–:](\d{1,3})$/;

const readSets = (text: string): Result<Stated["score"]["sets"], string> => {
  const parts = text
    .trim()
    .split(/[\s,]+/)
    .filter(Boolean);
  const sets: [number, number][] = [];
  for (const part of parts) {
    const found = SET.exec(part);
    if (!found) return err(`Sets: “${part}” is no set. Write finished sets like 6-4 3-6.`);
    sets.push([Number(found[1]), Number(found[2])]);
  }
  return ok(parts.length === 0 ? undefined : sets);
};

const readPair = (
  name: string,
  { A, B }: Readonly<Record<Side, string>>,
): Result<readonly [number, number] | undefined, string> => {
  const [a, b] = [A.trim(), B.trim()];
  if (a === "" && b === "") return ok(undefined);
  if (/^\d{1,3}$/.test(a) && /^\d{1,3}$/.test(b)) return ok([Number(a), Number(b)]);
  return err(`${name}: write a whole number for both players, or leave both empty.`);
};

/** A typed score as a fact, or a sentence that says what to write. Games start anew where only sets are given. SPEC PD83. */
export const readStatedScore = (typed: TypedScore): Result<Stated, string> => {
  const sets = readSets(typed.sets);
  if (!sets.ok) return sets;
  const games = readPair("Games", typed.games);
  if (!games.ok) return games;
  const points = readPair("Points", typed.points);
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
