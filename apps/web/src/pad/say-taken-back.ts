import type { ByPlayer } from "@courtloom/core";
import type { EntryBody, Fact } from "@courtloom/match-log";
import type { Undoable } from "./last-undoable.ts";

const NOUNS: Readonly<Partial<Record<Fact["kind"], string>>> = {
  PointReplayed: "replayed point",
  PenaltyGiven: "penalty",
  ScoreStated: "stated score",
  ServerStated: "server",
  EndsStated: "ends",
  PlaySuspended: "suspension",
  PlayResumed: "play goes on",
  MatchEnded: "the match’s end",
};

const noun = (fact: EntryBody, names: ByPlayer<string>): string => {
  if (fact.kind === "PointCharted") return `point ${names[fact.point.winner]}`;
  return NOUNS[fact.kind as Fact["kind"]] ?? "last entry";
};

/** What undo just did, in words. */
export const sayTakenBack = ({ done }: Undoable, names: ByPlayer<string>): string => {
  const { body } = done.entry;
  switch (body.kind) {
    case "EntryVoided":
      return "Put back what was taken out.";
    case "EntryRestored":
      return "Taken out again.";
    case "EntryAmended":
      return "Taken back: the correction. It says what it said before.";
    case "EntryInserted":
      return `Taken back: ${noun(body.fact, names)}, put in before.`;
    default:
      return `Taken back: ${noun(body, names)}.`;
  }
};
