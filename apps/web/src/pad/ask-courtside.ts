import { err, ok, type Result } from "@courtloom/core";
import { COURTSIDE_PATH, type Courtside, type CourtsideEnter, type CourtsideRefused } from "./courtside.ts";

const UNAVAILABLE: CourtsideRefused = { ok: false, code: "unavailable" };

/** A network that takes the question and never answers is as good as none. */
const ANSWER_WITHIN_MS = 8_000;

const ask = async (
  path: string,
  init: RequestInit,
  withinMs: number = ANSWER_WITHIN_MS,
): Promise<Result<Courtside, CourtsideRefused>> => {
  try {
    const signal = AbortSignal.timeout(withinMs);
    const response = await fetch(path, { ...init, signal, credentials: "same-origin", cache: "no-store" });
    const body: unknown = await response.json();
    return response.ok ? ok(body as Courtside) : err(body as CourtsideRefused);
  } catch {
    // No connection, no answer in time, or something between that answered with a page of its own: both mean "not reached".
    return err(UNAVAILABLE);
  }
};

/** The court and matches of whoever is signed in on this phone; `matchId` when staff name one. */
export const readCourtside = (matchId?: string, withinMs?: number) => {
  const named = matchId === undefined ? "" : `?match=${encodeURIComponent(matchId)}`;
  return ask(`${COURTSIDE_PATH}${named}`, {}, withinMs);
};

/** Signs in with a court code. */
export const enterCourtside = (enter: CourtsideEnter) =>
  ask(COURTSIDE_PATH, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(enter),
  });
