import { readFileSync } from "node:fs";
import { otherSide, type Side } from "@courtloom/core";
import { type Place, placesOf } from "../day/point-script.ts";

/** The player who is charted. */
export const SUBJECT: Side = "A";

const KINDS = {
  ground: undefined,
  return: undefined,
  approach: "Approach",
  passing: "Passing shot",
  volley: "Volley",
  overhead: "Overhead",
  lob: "Lob",
  drop: "Drop shot",
} as const;
type Kind = keyof typeof KINDS;

/** A ball of the match as it was told: its places for the finger, its labels for the count. */
export interface ToldBall {
  readonly striker: Side;
  readonly kind: Kind;
  readonly from: Place;
  readonly to: Place;
  readonly isShort: boolean;
  readonly labels: ReadonlySet<string>;
  readonly miss: "net" | "wide" | "long" | undefined;
  readonly answers: readonly (readonly [question: string, answer: string])[];
}

export interface ToldPoint {
  readonly lets: number;
  readonly serve: "first" | "second" | "ace" | "secondAce" | "double";
  readonly balls: readonly ToldBall[];
  readonly winner: Side;
}

/** The told match, a line a point. Its header says what the words mean. */
export const toldLines = (): readonly string[] =>
  readFileSync(new URL("../../shared/matches/key-balls-120.txt", import.meta.url), "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"));

const readBall = (told: string, striker: Side, line: string): ToldBall => {
  const [ball = "", ...labels] = told.split("/");
  const [kind = "", path = ""] = ball.split(":");
  if (!Object.hasOwn(KINDS, kind)) throw new Error(`"${line}": no such kind ${kind}`);
  const answers = labels
    .filter((label) => label.startsWith("?"))
    .map((label) => label.slice(1).replaceAll("-", " ").split("="))
    .map(([question = "", answer = ""]) => [question, answer] as const);
  return {
    striker,
    kind: kind as Kind,
    ...placesOf(path, line),
    isShort: /^[dcn]/.test(path),
    labels: new Set(labels),
    miss: (["net", "wide", "long"] as const).find((miss) => labels.includes(miss)),
    answers,
  };
};

export const readToldPoint = (line: string, server: Side): ToldPoint => {
  const words = line.split(" ");
  const lets = words.filter((word) => word === "let").length;
  const [serve, ...balls] = words.slice(lets);
  if (serve === "ace" || serve === "secondAce") return { lets, serve, balls: [], winner: server };
  if (serve === "double") return { lets, serve, balls: [], winner: otherSide(server) };
  if (serve !== "first" && serve !== "second") throw new Error(`"${line}": no such serve`);
  const told = balls.map((ball, i) => readBall(ball, i % 2 === 0 ? otherSide(server) : server, line));
  const last = told.at(-1);
  if (!last) throw new Error(`"${line}": a point needs a ball after the serve`);
  return { lets, serve, balls: told, winner: last.miss ? otherSide(last.striker) : last.striker };
};

/** One thing that a chartist at key balls does with a finger. */
export type Step =
  | { readonly does: "press"; readonly name: string }
  | { readonly does: "touch"; readonly ball: ToldBall }
  | { readonly does: "drag"; readonly ball: ToldBall }
  /** Opens the ball's chip, opens its kinds, chooses: three touches, and one to close the chip where no ball follows that would. */
  | { readonly does: "kind"; readonly place: number; readonly name: string; readonly closes: boolean }
  | { readonly does: "answer"; readonly question: string; readonly name: string }
  /** How the last ball ended; the drawing may have said it already, and then no touch is needed. */
  | { readonly does: "miss"; readonly miss: "net" | "wide" | "long" };

const press = (name: string): Step => ({ does: "press", name });

const SERVE_STEPS: Readonly<Record<ToldPoint["serve"], readonly string[]>> = {
  first: ["First in"],
  second: ["Fault", "Second in"],
  ace: ["Ace"],
  secondAce: ["Fault", "Ace"],
  double: ["Fault", "Double fault"],
};

/** A ball of the charted player: touched where it was kept from behind the service line, else drawn; a rarer kind is named. */
const ownSteps = (ball: ToldBall, place: number, isLast: boolean): readonly Step[] => {
  const goesStraight = Math.abs(ball.from.x) > 1.4 && ball.from.x * ball.to.x > 1.4;
  const drawn = isLast || ball.isShort || goesStraight;
  const kind = KINDS[ball.kind];
  return [
    { does: drawn ? "drag" : "touch", ball },
    ...(kind ? [{ does: "kind", place, name: kind, closes: false } as const] : []),
    ...(ball.labels.has("satUp") ? [press("Sat up, kept")] : []),
  ];
};

const endSteps = (last: ToldBall, names: Readonly<Record<Side, string>>): readonly Step[] => {
  if (last.striker !== SUBJECT && !last.labels.has("drawn"))
    return [press(`${names[last.striker]}${last.miss ? " missed" : ": winner"}`)];
  if (last.miss) return [{ does: "miss", miss: last.miss }];
  return [
    press(last.labels.has("forced") ? `Forced a miss from ${names[otherSide(last.striker)]}` : "Winner"),
  ];
};

/** An opened chip closes by itself when another ball is drawn. */
const closedAtLast = (step: Step, i: number, steps: readonly Step[]): Step => {
  const goesOn = steps.slice(i).some(({ does }) => does === "touch" || does === "drag");
  return step.does === "kind" ? { ...step, closes: !goesOn } : step;
};

/** What a chartist at key balls does for a point, up to Done. */
export const stepsOf = (point: ToldPoint, names: Readonly<Record<Side, string>>): readonly Step[] => {
  const { balls, serve, lets } = point;
  const steps: Step[] = [];
  for (let i = 0; i < lets; i += 1) steps.push(press(i === 0 ? "Let" : `Let (${i})`));
  steps.push(...SERVE_STEPS[serve].map(press));
  const last = balls.at(-1);
  let place = 0;
  for (const ball of balls) {
    if (ball.striker === SUBJECT) steps.push(...ownSteps(ball, place, ball === last));
    else if (ball === last && ball.labels.has("drawn")) steps.push({ does: "drag", ball });
    else continue;
    place += 1;
  }
  if (last) {
    steps.push(...endSteps(last, names));
    for (const [question, name] of last.answers) steps.push({ does: "answer", question, name });
  }
  return [...steps.map(closedAtLast), press("Done")];
};

const ownGroundstrokes = (points: readonly ToldPoint[]): readonly ToldBall[] =>
  points.flatMap(({ balls }) => balls).filter((ball) => ball.striker === SUBJECT && ball.kind === "ground");

/** Line balls of the charted player as they were labelled, without any geometry. */
export const toldLineBalls = (points: readonly ToldPoint[]) => {
  const own = ownGroundstrokes(points);
  const line = own.filter(({ labels }) => labels.has("line"));
  return {
    groundstrokes: own.length,
    tried: line.length,
    missed: line.filter(({ miss }) => miss !== undefined).length,
    satUp: own.filter(({ labels }) => labels.has("satUp")).length,
  };
};
