import type { RefusalCode } from "@courtloom/protocol";

/** Why a board or a court is not shown, and what to do. */
export const REFUSAL_WORDS = {
  bad_shape: "This page asked for something the server does not know. Reload it.",
  too_large: "This page asked for too much at once. Reload it.",
  old_version: "This page is older than the server. Reload it.",
  new_version: "The server is older than this page. Reload in a minute.",
  signed_out: "You are signed out. Sign in, then come back here.",
  code_expired: "The code for this screen has run out. Ask the desk for a new one.",
  forbidden: "You may not see this. Ask the director of the day.",
  unknown_match: "There is no such match. Go back to the board.",
  unknown_day: "There is no such day. Choose one from the list of days.",
  unknown_lane: "This charting session is not known. Go back to the board.",
  lead_taken: "Another phone leads this match now.",
  sealed: "This match is closed.",
  busy: "The server is busy. Trying again.",
  unavailable: "The server does not answer. Trying again.",
} satisfies Record<RefusalCode, string>;
