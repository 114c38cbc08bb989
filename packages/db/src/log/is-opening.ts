import type { EntryBody, MatchOpened } from "@courtloom/match-log";
import { canonicalJson } from "./canonical-json.ts";

/** Whether a match that is open already was opened by the same opening, so that a repeated call is harmless. */
export const isOpening = (body: EntryBody, opened: MatchOpened): boolean =>
  canonicalJson(body) === canonicalJson(opened);
