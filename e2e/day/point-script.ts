import { otherSide, type Side } from "@courtloom/core";

/** A place on court in metres as its striker sees it: x to the right, net at y = 0, own half negative. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * Where people strike and send balls, by letter. Struck: `D` deuce corner, `C` ad corner, `M` middle, all behind
 * the baseline; `d`, `c` short on either side, `n` at the net. Sent: `R` right, `L` left, `T` middle, deep; `r`, `l` short;
 * `Rlong`, `Llong`, `Rwide`, `Lwide`, and `Rnet`, `Lnet`, `Tnet`, which end at the net on their way.
 */
const STRUCK: Readonly<Record<string, Place>> = {
  D: { x: 3, y: -12.4 },
  C: { x: -3, y: -12.4 },
  M: { x: 0, y: -12.4 },
  d: { x: 2.7, y: -5.2 },
  c: { x: -2.7, y: -5.2 },
  n: { x: -2, y: -2.5 },
};
const SENT: Readonly<Record<string, Place>> = {
  R: { x: 2.8, y: 9.2 },
  L: { x: -2.8, y: 9.2 },
  T: { x: 0, y: 9.2 },
  r: { x: 2.6, y: 3.9 },
  l: { x: -2.6, y: 3.9 },
  Rlong: { x: 2.8, y: 13.6 },
  Llong: { x: -2.8, y: 13.6 },
  Tlong: { x: 0, y: 13.6 },
  Rwide: { x: 5.6, y: 8.4 },
  Lwide: { x: -5.6, y: 8.4 },
};
const NET_Y = -0.4;

/** Where a ball told as `struck>sent` was struck and went. */
export const placesOf = (told: string, line: string): { readonly from: Place; readonly to: Place } => {
  const [struck = "", target = ""] = told.split(">");
  const from = known(STRUCK, struck, line);
  return { from, to: sent(from, target, line) };
};

export interface ScriptStroke {
  readonly striker: Side;
  readonly from: Place;
  readonly to: Place;
  readonly miss: "net" | "wide" | "long" | undefined;
  /** From a side to the same side. */
  readonly isLine: boolean;
  /** Neither the return nor an answer to somebody at the net. */
  readonly isGroundstroke: boolean;
}

export interface ScriptPoint {
  readonly serve: "first" | "second" | "ace" | "secondAce" | "double";
  readonly strokes: readonly ScriptStroke[];
  readonly winner: Side;
}

const sideOfPlace = (letter: string): "right" | "left" | "middle" => {
  if (/^[DdRr]/.test(letter)) return "right";
  return /^[CcLl]/.test(letter) ? "left" : "middle";
};

const known = (table: Readonly<Record<string, Place>>, name: string, line: string): Place => {
  const place = table[name];
  if (!place) throw new Error(`"${line}": there is no place ${name}`);
  return place;
};

const sent = (from: Place, name: string, line: string): Place => {
  if (!name.endsWith("net")) return known(SENT, name, line);
  const goal = known(SENT, name.slice(0, 1), line);
  const share = (NET_Y - from.y) / (goal.y - from.y);
  return { x: from.x + (goal.x - from.x) * share, y: NET_Y };
};

/**
 * Reads one line as a person would tell it: the serve, then the strokes from the return on, as `D>L` (from > to).
 * The last stroke ends the point: in, it was a winner; net, wide or long, it was missed.
 */
export const readPoint = (line: string, server: Side): ScriptPoint => {
  const [serve = "", ...told] = line.split(/\s+/);
  if (serve === "ace" || serve === "secondAce") return { serve, strokes: [], winner: server };
  if (serve === "double") return { serve, strokes: [], winner: otherSide(server) };
  if (serve !== "first" && serve !== "second") throw new Error(`"${line}": no such serve`);
  const strokes = told.map((told, i): ScriptStroke => {
    const [struck = "", target = ""] = told.split(">");
    const from = known(STRUCK, struck, line);
    const before = line.split(/\s+/)[i]?.split(">")[0] ?? "";
    const side = sideOfPlace(struck);
    return {
      striker: i % 2 === 0 ? otherSide(server) : server,
      from,
      to: sent(from, target, line),
      miss: (/net|wide|long/.exec(target)?.[0] as ScriptStroke["miss"]) ?? undefined,
      isLine: side !== "middle" && side === sideOfPlace(target),
      isGroundstroke: i > 0 && !(i > 0 && /^[dc]$/.test(before)),
    };
  });
  const last = strokes.at(-1);
  if (!last) throw new Error(`"${line}": a point needs a stroke after the serve`);
  return { serve, strokes, winner: last.miss ? otherSide(last.striker) : last.striker };
};
