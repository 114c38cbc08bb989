import type { ByPlayer } from "@courtloom/core";
import type { EntryBody } from "@courtloom/match-log";
import { factWords } from "../../../match-words/fact-words.ts";

/** What an entry says, in words. `place` names the entry that a correction is about. */
export const entryWords = (names: ByPlayer<string>, body: EntryBody, place: string): string => {
  switch (body.kind) {
    case "MatchOpened":
      return `The match was opened, ${names[body.firstServer]} to serve`;
    case "MatchSealed":
      return "The match was closed";
    case "LeadTaken":
      return "Took over: leads from here";
    case "EntryVoided":
      return `Took back ${place}`;
    case "EntryRestored":
      return `Put back ${place}`;
    case "EntryAmended":
      return `Corrected ${place}: ${factWords(names, body.to)}`;
    case "EntryInserted":
      return `Put in ${body.before === undefined ? "at the end" : `before ${place}`}: ${factWords(names, body.fact)}`;
    default:
      return factWords(names, body);
  }
};
