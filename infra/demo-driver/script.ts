import type { Side } from "@courtloom/core";
import { createRandom, DEMO_PLAYERS, DEMO_VISITORS, type DemoMatchSide, playMatch } from "@courtloom/demo";
import type { EntryBody } from "@courtloom/match-log";
import type { MatchFormat } from "@courtloom/tennis";

/** What a simulated phone charts next, and how long its person takes to get there at real speed. */
export interface Step {
  readonly id: string;
  readonly body: EntryBody;
  readonly waitMs: number;
}

/** Something that happens on a court beside the play; `at` is a step. */
export type Happening =
  /** The phone says nothing for `ms` of real time while its person goes on charting. */
  | { readonly type: "silent"; readonly at: number; readonly ms: number }
  /** Rain: play is suspended for `ms` at real speed. */
  | { readonly type: "rain"; readonly at: number; readonly ms: number };

export interface ScriptedMatch {
  readonly matchId: string;
  readonly format: MatchFormat;
  readonly firstServer: Side;
  readonly names: Readonly<Record<Side, string>>;
}

const PEOPLE = new Map<string, DemoMatchSide>([
  ...DEMO_VISITORS.map((v) => [v.displayName, { level: v.level, temper: "steady", own: false }] as const),
  ...DEMO_PLAYERS.map((p) => [p.displayName, { level: p.level, temper: p.temper, own: true }] as const),
]);

/** Who misses more than usual on the demo's day, so that an alert can be seen. */
const OFF_DAY: ReadonlySet<string> = new Set(["Kaito L."]);

const usualSide = (name: string): DemoMatchSide =>
  PEOPLE.get(name) ?? { level: 3, temper: "steady", own: false };

const sideOf = (name: string): DemoMatchSide => ({ ...usualSide(name), offDay: OFF_DAY.has(name) });

const seedOf = (text: string): number =>
  [...text].reduce((hash, c) => (Math.imul(hash, 31) + c.charCodeAt(0)) | 0, 7);

/**
 * The whole match as steps, the same for the same match each time it is asked for, so that a driver
 * that was stopped goes on where the server's cursor says.
 */
export const scriptOf = (match: ScriptedMatch, happenings: readonly Happening[]): Step[] => {
  const random = createRandom(seedOf(match.matchId));
  const sides = { A: sideOf(match.names.A), B: sideOf(match.names.B) };
  const entries = playMatch(random, {
    format: match.format,
    firstServer: match.firstServer,
    sides,
    startMs: 0,
  });
  const steps = entries.map((entry, i): Step => {
    const before = entries[i - 1];
    return { id: entry.id, body: entry.body, waitMs: before ? entry.atMs - before.atMs : 5_000 };
  });
  const rain = happenings.find((h) => h.type === "rain");
  if (rain && rain.at < steps.length) {
    steps.splice(
      rain.at,
      0,
      { id: random.uuid(), body: { kind: "PlaySuspended", reason: "rain" }, waitMs: 5_000 },
      { id: random.uuid(), body: { kind: "PlayResumed" }, waitMs: rain.ms },
    );
  }
  return steps;
};

/** The lane of the demo's phone on a match: one and the same after a restart. */
export const laneIdOf = (matchId: string): string => createRandom(seedOf(`lane ${matchId}`)).uuid();
