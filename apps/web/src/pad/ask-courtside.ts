import { err, ok, type Result } from "@courtloom/core";
import { COURTSIDE_PATH, type Courtside, type CourtsideEnter, type CourtsideRefused } from "./courtside.ts";

const UNAVAILABLE: CourtsideRefused = { ok: false, code: "unavailable" };

const ask = async (path: string, init: RequestInit): Promise<Result<Courtside, CourtsideRefused>> => {
  try {
    const response = await fetch(path, { ...init, credentials: "same-origin", cache: "no-store" });
    const body: unknown = await response.json();
    return response.ok ? ok(body as Courtside) : err(body as CourtsideRefused);
  } catch {
    // No connection, or something between that answered with a page of its own: both mean "not reached".
    return err(UNAVAILABLE);
  }
};

/** The court and matches of whoever is signed in on this phone; `matchId` when staff name one. */
export const readCourtside = (matchId?: string) =>
  ask(matchId === undefined ? COURTSIDE_PATH : `${COURTSIDE_PATH}?match=${encodeURIComponent(matchId)}`, {});

/** Signs in with a court code. */
export const enterCourtside = (enter: CourtsideEnter) =>
  ask(COURTSIDE_PATH, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(enter),
  });
