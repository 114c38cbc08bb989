import { randomUUID } from "node:crypto";
import { readFileSync } from "node:fs";
import { FIGURE_NAMES, type FigureName, readTally, type Tally, tallyCount } from "@courtloom/decisions";
import type { Entry, EntryBody, LoggedEntry } from "@courtloom/match-log";

interface SixtyPoints {
  readonly log: readonly LoggedEntry[];
  readonly tally: Tally;
}

const FILE = new URL("../../shared/matches/sixty-points.json", import.meta.url);

/** The sixty points written and tallied by hand, and the tally that the hand found. */
const read = (): SixtyPoints => JSON.parse(readFileSync(FILE, "utf8")) as SixtyPoints;

/** What the hand found of every figure, as x of n. */
export const handTally = (): ReadonlyMap<FigureName, { readonly x: number; readonly n: number }> => {
  const tally = readTally(read().tally);
  if (!tally.ok) throw new Error(tally.error);
  return new Map(FIGURE_NAMES.map((name) => [name, tallyCount(tally.value, name)]));
};

const entryOf = (n: number, body: EntryBody): Entry => ({
  v: 1,
  id: randomUUID(),
  n,
  atMs: n * 20_000,
  wallMs: 1_790_000_000_000 + n * 20_000,
  body,
});

/** The sixty points as a pad's file, going on after the entries that its lane already has; the visitor then retires. */
export const laneFile = (lane: {
  readonly laneId: string;
  readonly matchId: string;
  readonly after: number;
}): string => {
  const points = read()
    .log.slice(1)
    .map(({ entry }) => entry.body);
  const bodies: readonly EntryBody[] = [
    ...points,
    { kind: "MatchEnded", how: { type: "retired", side: "B" } },
  ];
  const entries = bodies.map((body, i) => entryOf(lane.after + 1 + i, body));
  const { laneId, matchId } = lane;
  return JSON.stringify({
    format: "courtloom-lanes",
    v: 1,
    writtenMs: 1_790_000_000_000,
    lanes: [{ laneId, matchId, level: "key", staff: false, entries }],
  });
};
