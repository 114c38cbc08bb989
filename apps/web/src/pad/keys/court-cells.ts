import type { Seat, SeenPoint } from "@courtloom/tennis";

/** One of nine parts of one half of the court, as the chartist sees it. */
export interface CourtCell {
  /** The key's place on the keyboard. */
  readonly code: string;
  /** The near or left half, or the far or right one. */
  readonly half: "first" | "second";
  /** In the block of letters, from the left and from the top. */
  readonly column: 0 | 1 | 2;
  readonly row: 0 | 1 | 2;
}

const BLOCKS = {
  first: [
    ["KeyQ", "KeyW", "KeyE"],
    ["KeyA", "KeyS", "KeyD"],
    ["KeyZ", "KeyX", "KeyC"],
  ],
  second: [
    ["KeyU", "KeyI", "KeyO"],
    ["KeyJ", "KeyK", "KeyL"],
    ["KeyM", "Comma", "Period"],
  ],
} as const;

const PLACES = [0, 1, 2] as const;

/**
 * The letters that draw: the left block is the near (or left) half and the right block the far (or right) one,
 * each laid out as that half is on the screen. SPEC PD65.
 */
export const COURT_CELLS: readonly CourtCell[] = (["first", "second"] as const).flatMap((half) =>
  PLACES.flatMap((row) => PLACES.map((column) => ({ code: BLOCKS[half][row][column], half, column, row }))),
);

export const cellOf = (code: string): CourtCell | undefined => COURT_CELLS.find((each) => each.code === code);

/** From the net: 0 at the net, 2 at the baseline. */
const depthOf = ({ half, column, row }: CourtCell, seat: Seat): 0 | 1 | 2 => {
  const outward = seat === "behind" ? row : column;
  const fromNet = seat === "behind" ? half === "first" : half === "second";
  return fromNet ? outward : (PLACES[2 - outward] ?? 1);
};

/** Metres from the net: a ball is struck further back than it comes down. Each is well inside its part. */
const DEPTHS_M = { struck: [4, 9, 12.4], went: [4.6, 7.8, 10.6] } as const;
/** Metres from the middle line. */
const ACROSS_M = 2.9;

/** The middle of a part of the court, for where a ball was struck or where it went. */
export const placeOfCell = (cell: CourtCell, seat: Seat, role: "struck" | "went"): SeenPoint => {
  const along = Math.round(DEPTHS_M[role][depthOf(cell, seat)] * 100) * (cell.half === "first" ? -1 : 1);
  const across = Math.round(ACROSS_M * 100);
  return seat === "behind"
    ? { right: (cell.column - 1) * across, away: along }
    : { right: along, away: (1 - cell.row) * across };
};

const DEPTH_WORDS = ["short", "mid-court", "at the baseline"] as const;
const COLUMN_WORDS = ["left", "middle", "right"] as const;
const ROW_WORDS = ["far side", "middle", "near side"] as const;

/** "near left, at the baseline"; from the side "left end, far side, short". */
export const sayCell = (cell: CourtCell, seat: Seat): string => {
  const depth = DEPTH_WORDS[depthOf(cell, seat)];
  return seat === "behind"
    ? `${cell.half === "first" ? "near" : "far"} ${COLUMN_WORDS[cell.column]}, ${depth}`
    : `${cell.half === "first" ? "left" : "right"} end, ${ROW_WORDS[cell.row]}, ${depth}`;
};
