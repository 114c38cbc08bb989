import { err, ok, type Result } from "@courtloom/core";
import {
  HAND_OVER_PATH,
  type HandOverAsk,
  type HandOverCode,
  type HandOverLane,
  type HandOverRefusalCode,
  type HandOverRefused,
} from "./hand-over-wire.ts";

/** A network that takes the question and never answers is as good as none. */
const ANSWER_WITHIN_MS = 8_000;

const send = async (method: "POST" | "DELETE", body: object): Promise<Response> =>
  fetch(HAND_OVER_PATH, {
    method,
    signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
    credentials: "same-origin",
    cache: "no-store",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
  });

const refusalOf = async (response: Response): Promise<HandOverRefusalCode> =>
  ((await response.json()) as HandOverRefused).code;

/** Asks for a code; `unavailable` when there is no answer in time. */
export const askForCode = async (ask: HandOverAsk): Promise<Result<HandOverCode, HandOverRefusalCode>> => {
  try {
    const response = await send("POST", ask);
    return response.ok ? ok((await response.json()) as HandOverCode) : err(await refusalOf(response));
  } catch {
    // No connection, no answer in time, or something between that answered with a page of its own: all mean "not reached".
    return err("unavailable");
  }
};

/** Withdraws the lane's codes. */
export const withdrawCode = async (lane: HandOverLane): Promise<Result<void, HandOverRefusalCode>> => {
  try {
    const response = await send("DELETE", lane);
    return response.ok ? ok(undefined) : err(await refusalOf(response));
  } catch {
    // As above.
    return err("unavailable");
  }
};
