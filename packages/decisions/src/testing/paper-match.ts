import { assert, type Side } from "@courtloom/core";
import type { ChartingLevel, EntryBody, Serve, Shot } from "@courtloom/match-log";
import { pointTo } from "@courtloom/match-log/testing";
import type { CourtPoint } from "@courtloom/tennis";
import { drawn, touch } from "./drawn.ts";

/**
 * A match as on a paper sheet: who won the point, the level, the serve (1, 2, A ace, a ace on the second, D double
 * fault, - not told), then the balls, and `^n` chances that sat up and were kept.
 *
 * A ball is a depth (B behind the baseline, I inside it, S inside the service line), a side (l, m, r), and a choice
 * (k kept, a touch; l line; c cross; m middle; f from the middle). After it what was answered: w low, n net high,
 * u sits up, j jumps; t set, h hurried; o opponent set, q wide left; + came in, - stayed; ? hesitated, ! did not;
 * W winner, F forced, N in, X missed long; # the net cord; =v a volley, =p a passing shot; * deep, ' short. The
 * opponent's balls begin with b.
 */
export const PAPER_SHEET: readonly string[] = [
  "A key 1 Brk Blk Brlu!W",
  "B key 2 Brk BrlwoX",
  "A key A",
  "A key 1 Brk Brk Brk",
  "A key 1 Blk Srlw+W",
  "B key 1 BlkN Brk BrcX",
  "A key 2 Brk Blk BllnqF",
  "B key 1 Brk",
  "B key A",
  "A key 2 Blk Blk Blk BllnhoW ^1",
  "B key 2 Brk Brk Brlu?X",
  "A key 1 Brk Slcw+ Smm=vW",
  "A key 2 Brk Ilk IllwhoW",
  "B key D",
  "B key 1 Brk BmfX",
  "A key 1 Blk Blk Brk Brk Brk BrluF",
  "A key 2 Srlw-F",
  "A key 1 Brk Brk ^2",
  "B key 2 Blk BllwoX",
  "A key 1 Blk Bmk Brk IrlntW",
  "A key 2 Brk Srcj-W",
  "B key 1 Brk Blk Brlo",
  "A key 2 Blk Blk ^1",
  "B every 1 bBrc BrlwoX",
  "A every 1 bBrc Brcn! bBrc* BrlutW",
  "B every 2 bBlc BlcX",
  "A every 1 bBrc Brm bBmm Bmf bBlc* IrlnoW",
  "A every 1 bBlcX",
  "B every 1 bBrc Brc bBrc Brc bBrc Brc bBrc* Brc bBrc BrlwqX",
  "A every 1 bBrc Blm bBlc Blcuo",
  "A every a",
  "B every 1 Blm bBrc BrlwoX",
  "B every 2 Brc bBrc Brc bBrlW",
  "A every 1 Brc bBrc* Brcu bBlcX",
  "B every 1 BrcX",
  "B every 2 Brc bBrc' Srlw+ bBrc=pW",
  "A every 1 bBrc' Srlu-W",
  "A every 2 bBrc Brc bBrcX",
  "A every 1 bBrc BlltqF",
  "A every 1 bBrc Brk bBrc Brk bBrcX",
  "A every 2 Blc bBrc Brcn bBmm IrctoW",
  "B every 1 Brc bBlc* BllwoX",
  "B every 1 BlcX",
  "A every 2 Blc bBlc Blm bBmf BrlutW",
  "B every A",
  "B every 1 Brc bBrc' Slcw- bBrlW",
  "A score 1",
  "B score 2",
  "A score A",
  "A score -",
  "A score 1",
  "B key 1 Brk BrlX",
  "A key 2 Brk Brk ^1",
  "B key 1 Blk Blluo?X",
  "A key 1 Brk Blk BllhW",
  "B key 2 Brk Brk SrcwhX",
  "B key 1 Brk ^3",
  "A key 1 Brk Brlu#W",
  "A key 1 Blk Brk Bmk",
  "B key 2 BrlwoX",
];

const DEPTHS = { B: -12, I: -9, S: -5 } as const;
const SIDES = { l: -3, m: 0, r: 3 } as const;

const SERVES: Readonly<Record<string, Serve | undefined>> = {
  "1": { outcome: "firstIn", faults: 0 },
  "2": { outcome: "secondIn", faults: 1 },
  A: { outcome: "ace", faults: 0 },
  a: { outcome: "ace", faults: 1 },
  D: { outcome: "doubleFault", faults: 2 },
};

type Answers = Partial<Omit<Shot, "striker" | "from" | "to">>;

const MARKS: Readonly<Record<string, Answers>> = {
  w: { ballHeight: "low" },
  n: { ballHeight: "netHigh" },
  u: { ballHeight: "sitsUp" },
  j: { ballHeight: "jumps" },
  t: { ballTime: "set" },
  h: { ballTime: "hurried" },
  o: { opponent: "set" },
  q: { opponent: "wideLeft" },
  "+": { cameIn: true },
  "-": { cameIn: false },
  "?": { hesitated: true },
  "!": { hesitated: false },
  W: { result: "winner" },
  F: { result: "forced" },
  N: { result: "in" },
  X: { result: "missed", miss: "long" },
  "#": { leftOut: "netCord" },
  v: { kind: "volley" },
  p: { kind: "passing" },
};

const numberAt = (of: Readonly<Record<string, number>>, mark: string | undefined): number => {
  const value = of[mark ?? ""];
  assert(value !== undefined, `the sheet has no mark ${mark}`);
  return value;
};

/** How far beyond the net it came down, in metres: past the baseline when it was missed. */
const lengthOf = (marks: string): number => {
  if (marks.includes("X")) return 13.2;
  if (marks.includes("*")) return 11;
  return marks.includes("'") ? 4 : 9;
};

const targetX = (from: number, choice: string | undefined): number => {
  if (choice === "m") return 0;
  if (choice === "f") return -2.8;
  return choice === "l" ? Math.sign(from) * 2.8 : -Math.sign(from) * 2.8;
};

const readBall = (written: string): Shot => {
  const striker: Side = written.startsWith("b") ? "B" : "A";
  const [depth, side, choice, ...rest] = striker === "B" ? written.slice(1) : written;
  const marks = rest.join("");
  const from: CourtPoint = { x: numberAt(SIDES, side), y: numberAt(DEPTHS, depth) };
  const answers: Answers = Object.assign({}, ...rest.map((mark) => MARKS[mark]));
  if (choice === "k") return touch(striker, from, answers);
  return drawn(striker, from, { x: targetX(from.x, choice), y: lengthOf(marks) }, answers);
};

const readRow = (row: string): EntryBody => {
  const [winner, level, serve, ...rest] = row.split(" ");
  const told = SERVES[serve ?? ""];
  const satUp = rest.find((written) => written.startsWith("^"));
  return pointTo(winner === "A" ? "A" : "B", {
    level: level as ChartingLevel,
    ...(told ? { serve: told } : {}),
    shots: rest.filter((written) => written !== satUp).map(readBall),
    ...(satUp ? { satUpKept: Number(satUp.slice(1)) } : {}),
  });
};

/** The sheet as entries: sixty points, a set of nine games and two games and a bit. */
export const paperMatch = (): EntryBody[] => PAPER_SHEET.map(readRow);
