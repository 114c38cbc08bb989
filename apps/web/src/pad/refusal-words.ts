import type { RefusalCode } from "@courtloom/protocol";
import type { CourtsideRefused } from "./courtside.ts";

/** What a person does about it, beside going on charting. */
export type RefusalHelp = "enterCode" | "tryAgain" | "reload" | "none";

interface RefusalSaying {
  readonly text: string;
  readonly help: RefusalHelp;
}

const KEPT = "All is on this phone.";

/** A sentence for every refusal: what happened, what is safe, what to do. */
export const REFUSAL_WORDS = {
  signed_out: {
    text: `You are signed out. ${KEPT} Enter the court’s code again to send it.`,
    help: "enterCode",
  },
  code_expired: { text: `The code has ended. ${KEPT} Ask the desk for a new code.`, help: "enterCode" },
  forbidden: {
    text: `This match is not on your court. ${KEPT} Ask the desk, or enter this court's code.`,
    help: "enterCode",
  },
  lead_taken: {
    text: `Another phone charts this court. ${KEPT} Your points are kept as second.`,
    help: "tryAgain",
  },
  sealed: { text: `This match is closed. ${KEPT} The director can still put something right.`, help: "none" },
  old_version: { text: `This page is older than the server. ${KEPT} Load it again to send.`, help: "reload" },
  new_version: {
    text: `This page is newer than the server. ${KEPT} Load it again in a minute.`,
    help: "reload",
  },
  unknown_match: {
    text: `The server does not know this match. ${KEPT} Ask the desk if it was taken off the list.`,
    help: "tryAgain",
  },
  unknown_day: { text: `The server does not know this day. ${KEPT} Ask the desk.`, help: "tryAgain" },
  unknown_lane: { text: `The server lost track of this phone. ${KEPT}`, help: "tryAgain" },
  bad_shape: {
    text: `The server could not read this. ${KEPT} Load the page again.`,
    help: "reload",
  },
  too_large: { text: `One entry is too large to send. ${KEPT} Show it to the desk.`, help: "tryAgain" },
  busy: { text: `The server is busy. ${KEPT} It is sent again by itself.`, help: "none" },
  unavailable: { text: `The server does not answer. ${KEPT} It is sent again by itself.`, help: "none" },
} satisfies Record<RefusalCode, RefusalSaying>;

const waitWords = (afterMs: number | undefined): string =>
  afterMs === undefined ? "in a minute" : `in ${Math.ceil(afterMs / 1_000)} s`;

/** The sentence for a code that was not taken, or a court that could not be read. */
export const courtsideWords = ({ code, afterMs }: CourtsideRefused): string => {
  switch (code) {
    case "signed_out":
      return "Enter the court's code and your name.";
    case "code_unknown":
      return "This code is not known today. Check it letter by letter, or ask the desk.";
    case "code_expired":
      return "This code has ended. Ask the desk for a new one.";
    case "code_used":
      return "This hand-over code was used: one code, one phone. Ask who charts for another, or enter the court's code.";
    case "code_lapsed":
      return "This hand-over code has ended. Ask who charts for another: it holds for 10 minutes. Or enter the court's code.";
    case "name_missing":
      return "Enter your name, up to 40 letters, so that others see who charts.";
    case "too_many":
      return `Too many tries from here. Try again ${waitWords(afterMs)}.`;
    case "forbidden":
      return "This match is not yours to chart. Ask the director.";
    case "unknown_match":
      return "This match is not on the list any more. Ask the desk.";
    case "bad_shape":
      return "The server could not read this. Load the page again.";
    case "unavailable":
      return "The server does not answer. Check the signal and try again.";
  }
};
