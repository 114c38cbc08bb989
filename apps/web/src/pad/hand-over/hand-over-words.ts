import type { LaneSignal } from "@courtloom/sync";
import { courtsideWords } from "../refusal-words.ts";
import type { HandOverRefusalCode } from "./hand-over-wire.ts";

/** What the phone that leads knows when its person wants to hand over. */
export interface HandOverFacts {
  readonly signal: LaneSignal;
  readonly unsent: number;
  /** A point is half charted. */
  readonly drafting: boolean;
  /** The person does not want to wait for what is unsent. */
  readonly hurried: boolean;
}

/** What stands between this phone and a code; `ready`: nothing. */
export type HandOverStep = "finishPoint" | "noSignal" | "sending" | "ready";

export const handOverStep = ({ signal, unsent, drafting, hurried }: HandOverFacts): HandOverStep => {
  if (drafting) return "finishPoint";
  if (signal !== "open") return "noSignal";
  return unsent > 0 && !hurried ? "sending" : "ready";
};

const LATE = "What arrives after the hand-over stands beside the score.";

/** Facts, then what to do. */
export const stepWords = (
  step: Exclude<HandOverStep, "ready">,
  unsent: number,
): readonly [string, ...string[]] => {
  switch (step) {
    case "finishPoint":
      return ["Finish or undo this point first. A half-charted point is not handed over."];
    case "noSignal":
      return [
        "No signal. A code needs signal.",
        "Without one: the other person opens this court on their phone with its code, and can take over once this phone was not heard for 30 s.",
        unsent > 0 ? `${unsent} unsent: kept here, and sent when there is signal. ${LATE}` : "All is sent.",
      ];
    case "sending":
      return [`${unsent} unsent. They are sent first, then the code comes by itself.`];
  }
};

/** What is left to send while a code is shown. */
export const unsentWords = (unsent: number): string =>
  unsent > 0 ? `${unsent} unsent: they follow by themselves.` : "All sent.";

/** How long a code still holds. */
export const leftWords = (leftMs: number): string => {
  const seconds = Math.ceil(leftMs / 1_000);
  return seconds > 60 ? `${Math.ceil(seconds / 60)} min left` : `${seconds} s left`;
};

/** Why there is no code, and what to do. */
export const noCodeWords = (code: HandOverRefusalCode): string => {
  switch (code) {
    case "not_lead":
      return "This phone does not lead this match now, or the match is closed. There is nothing to hand over.";
    case "no_court":
      return "This court has no code to come in with. Ask the desk to put the match on a court and make a code.";
    case "day_over":
      return "This day is over, so nobody new can come in. Ask the director.";
    case "signed_out":
    case "code_expired":
      return "This phone is not let in any more. All is on it. Enter the court's code again, then hand over.";
    case "too_many":
      return "Too many codes from this phone. Try again in 15 minutes, or let the other person enter the court's code.";
    case "forbidden":
    case "unknown_match":
      return "This match is not on your court. Ask the desk.";
    case "unavailable":
      return "The server does not answer. Check the signal and try again.";
    default:
      return courtsideWords({ ok: false, code });
  }
};
