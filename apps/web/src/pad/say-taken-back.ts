import type { ByPlayer } from "@courtloom/core";
import type { LoggedEntry } from "@courtloom/match-log";

/** What undo just voided, in words. */
export const sayTakenBack = (fact: LoggedEntry, names: ByPlayer<string>): string => {
  const { body } = fact.entry;
  if (body.kind === "PointCharted") return `Taken back: point ${names[body.point.winner]}.`;
  if (body.kind === "PointReplayed") return "Taken back: replayed point.";
  if (body.kind === "EndsStated") return "Taken back: ends.";
  if (body.kind === "ServerStated") return "Taken back: server.";
  return "Taken back.";
};
