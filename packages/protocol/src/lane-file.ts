import { err, ok, type Result } from "@courtloom/core";
import { CHARTING_LEVELS, type ChartingLevel, type Entry } from "@courtloom/match-log";
import { z } from "zod";
import { parseEntry } from "./entry-shape.ts";
import { idField, wallField } from "./field.ts";
import { LANE_FILE_FORMAT, LANE_FILE_VERSION } from "./limits.ts";

/** One lane in a file: a run of its entries, dense from the first one's n. */
export interface FiledLane {
  readonly laneId: string;
  readonly matchId: string;
  readonly level: ChartingLevel;
  /** A signed-in member of staff charted it; otherwise somebody with a court code did. */
  readonly staff: boolean;
  /** Id of the server's log that the phone last spoke to; absent when it never did in this lane. */
  readonly incarnation?: string;
  readonly entries: readonly Entry[];
}

/**
 * What a phone saves when it cannot send: its lanes with their entries, as JSON. No name of a player or chartist
 * is in it: ids of matches and lanes say whose it is, to the server alone.
 */
export interface LaneFile {
  readonly format: typeof LANE_FILE_FORMAT;
  readonly v: typeof LANE_FILE_VERSION;
  /** When it was saved, by the phone's clock, ms since 1970. */
  readonly writtenMs: number;
  readonly lanes: readonly FiledLane[];
}

/** An entry of a file, or one that cannot be read, as text; the lane goes on after it as it does over the wire. */
export type FiledItem =
  | { readonly n: number; readonly entry: Entry }
  | { readonly n: number; readonly rejected: { readonly code: "bad_shape"; readonly raw: string } };

/** A filed lane as it was read. */
export interface ReadLane extends Omit<FiledLane, "entries"> {
  readonly items: readonly FiledItem[];
}

export interface ReadLaneFile {
  readonly writtenMs: number;
  readonly lanes: readonly ReadLane[];
}

/**
 * `not_a_lane_file`: something else. `newer_file`: saved by a newer pad than this server. `bad_file`: it says that
 * it is one, and is damaged or made up.
 */
export type LaneFileFault = "not_a_lane_file" | "newer_file" | "bad_file";

const MOST_LANES = 40;
const MOST_ENTRIES = 5_000;
const HIGHEST_N = 1_000_000;

/** Entries are read one by one, so that one bad entry does not hold up the others. */
const fileShape = z.strictObject({
  format: z.literal(LANE_FILE_FORMAT),
  v: z.literal(LANE_FILE_VERSION),
  writtenMs: wallField,
  lanes: z
    .array(
      z.strictObject({
        laneId: idField,
        matchId: z.guid(),
        level: z.enum(CHARTING_LEVELS),
        staff: z.boolean(),
        incarnation: idField.exactOptional(),
        entries: z.array(z.unknown()).min(1).max(MOST_ENTRIES),
      }),
    )
    .min(1)
    .max(MOST_LANES),
});

const markShape = z.looseObject({ format: z.literal(LANE_FILE_FORMAT), v: z.int().min(1) });
const numberShape = z.looseObject({ n: z.int().min(1).max(HIGHEST_N) });

const saidNumber = (raw: unknown): number | undefined => {
  const said = numberShape.safeParse(raw);
  return said.success ? said.data.n : undefined;
};

/** As text; empty when it is nested too deeply to be written out. */
const textOf = (raw: unknown): string => {
  try {
    return JSON.stringify(raw) ?? "";
  } catch {
    // Only depth can bring this about: what was parsed from JSON has no cycles and no big integers.
    return "";
  }
};

/** Nothing when the numbers do not follow each other. */
const readItems = (raws: readonly unknown[]): readonly FiledItem[] | undefined => {
  const told = raws.findIndex((raw) => saidNumber(raw) !== undefined);
  const first = (saidNumber(raws[told]) ?? 0) - told;
  if (told < 0 || first < 1) return undefined;
  const items: FiledItem[] = [];
  for (const [i, raw] of raws.entries()) {
    const n = first + i;
    if ((saidNumber(raw) ?? n) !== n) return undefined;
    const entry = parseEntry(raw);
    // Text, as a phone's bad entry is kept aside: the same entry is then the same item by either way.
    items.push(
      entry.ok ? { n, entry: entry.value } : { n, rejected: { code: "bad_shape", raw: textOf(raw) } },
    );
  }
  return items;
};

/** Reads a saved file, parsed from JSON already. Unknown members are refused, not dropped. Spec SY22. */
export const readLaneFile = (raw: unknown): Result<ReadLaneFile, LaneFileFault> => {
  const mark = markShape.safeParse(raw);
  if (!mark.success) return err("not_a_lane_file");
  if (mark.data.v > LANE_FILE_VERSION) return err("newer_file");
  const parsed = fileShape.safeParse(raw);
  if (!parsed.success) return err("bad_file");
  const lanes: ReadLane[] = [];
  for (const { entries, ...lane } of parsed.data.lanes) {
    const items = readItems(entries);
    if (!items || lanes.some(({ laneId }) => laneId === lane.laneId)) return err("bad_file");
    lanes.push({ ...lane, items });
  }
  return ok({ writtenMs: parsed.data.writtenMs, lanes });
};
