import type { ProcedurePath } from "../access.ts";
import { samplePlan } from "./sample-plan.ts";

/** Rows that a sample input names; they have to be there for it to succeed. */
export interface SampleIds {
  readonly dayId: string;
  readonly courtId: string;
  readonly matchId: string;
  readonly codeId: string;
  readonly sessionId: string;
  readonly playerId: string;
}

interface Sample {
  readonly kind: "query" | "mutation";
  readonly input: unknown;
}

/** A file as a pad saves it, with one entry of the match. */
export const sampleFile = (matchId: string, laneId = "lane-1", numbers: readonly number[] = [1]) => ({
  format: "courtloom-lanes",
  v: 1,
  writtenMs: 5,
  lanes: [
    {
      ...{ laneId, matchId, level: "every", staff: false },
      entries: numbers.map((n) => ({
        ...{ v: 1, id: `00000000-0000-4000-8000-${String(n).padStart(12, "0")}`, n, atMs: 1, wallMs: 2 },
        body: { kind: "PointReplayed" },
      })),
    },
  ],
});

/** One input for every procedure that it accepts, so that tests can go over all of them. */
export const sampleInputs = (ids: SampleIds): Record<ProcedurePath, Sample> => {
  const player = (name: string, own: boolean) => ({ name, hand: "right", own });
  const { dayId, courtId, matchId, codeId, sessionId, playerId } = ids;
  const sides = { A: [player("Noor V.", true)], B: [player("Visitor red", false)] };
  return {
    "setup.status": { kind: "query", input: undefined },
    "setup.createAcademy": {
      kind: "mutation",
      input: {
        name: "Curlew Reach",
        timeZone: "Europe/Lisbon",
        directorName: "Maren H.",
        email: "maren@curlew-reach.example",
        password: "tide table heron",
      },
    },
    "setup.loadDemo": { kind: "mutation", input: {} },
    "account.me": { kind: "query", input: undefined },
    "account.enterDemo": { kind: "mutation", input: {} },
    "day.list": { kind: "query", input: undefined },
    "day.create": { kind: "mutation", input: { name: "Spring day", date: "2026-05-30", courts: 4 } },
    "day.get": { kind: "query", input: { dayId } },
    "match.get": { kind: "query", input: { matchId } },
    "match.add": {
      kind: "mutation",
      input: { dayId, courtId, sides, format: "oneSet", coachingMode: "practice", firstServer: "A" },
    },
    "match.setCoachingMode": { kind: "mutation", input: { matchId, coachingMode: "permitted" } },
    "match.log": { kind: "query", input: { matchId, after: 0, limit: 50 } },
    "match.lanes": { kind: "query", input: { matchId } },
    "lane.checkFile": { kind: "mutation", input: { file: sampleFile(matchId) } },
    "lane.takeInFile": { kind: "mutation", input: { file: sampleFile(matchId) } },
    "code.list": { kind: "query", input: { dayId } },
    "code.issue": { kind: "mutation", input: { dayId, wanted: { kind: "court", courtId } } },
    "code.revoke": { kind: "mutation", input: { codeId } },
    "code.endPhone": { kind: "mutation", input: { sessionId } },
    "player.list": { kind: "query", input: { ownOnly: true } },
    "player.add": {
      kind: "mutation",
      input: { name: "Idris C.", hand: "left", own: true, birthYear: 2012, squad: "U14", level: 3 },
    },
    "figures.player": { kind: "query", input: { playerId, filter: {} } },
    "figures.points": { kind: "query", input: { playerId, figureId: "lineMissed", filter: {} } },
    "figures.lineMap": { kind: "query", input: { playerId, filter: {} } },
    "figures.cost": { kind: "query", input: { playerId, filter: {} } },
    "figures.match": { kind: "query", input: { matchId } },
    "plan.list": { kind: "query", input: undefined },
    "plan.get": { kind: "query", input: { playerId } },
    "plan.save": {
      kind: "mutation",
      input: { playerId, expected: 0, ...samplePlan(), note: "After Saturday" },
    },
    "plan.startFromStarter": { kind: "mutation", input: {} },
    "plan.forMatch": { kind: "query", input: { matchId } },
    "plan.courtWords": { kind: "query", input: { matchId } },
    "watch.get": { kind: "query", input: undefined },
    "watch.save": {
      kind: "mutation",
      input: { playerId, expected: 0, choice: { rates: ["lineMissed"], alpha: 0.05, quiet: true } },
    },
  };
};
