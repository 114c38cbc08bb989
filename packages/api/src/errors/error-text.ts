import type { ErrorCode } from "./error-code.ts";

/** What a person reads: what is the matter, then what to do. Names nobody and quotes no input. */
export const ERROR_TEXT = {
  bad_input: "Something in this form cannot be used. Mend the marked field.",
  signed_out: "You are signed out. Sign in, then try again.",
  code_expired: "The code for this device has run out. Ask the desk for a new one.",
  forbidden: "This is not yours to change or see. Ask the director.",
  forbidden_origin: "This came from another site and was not done. Open the page again at its own address.",
  not_found: "There is no such thing here. Reload the page.",
  wrong_method: "This cannot be asked in that way. Reload the page.",
  not_json: "This was sent in a form that is not understood. Reload the page.",
  too_large: "This was too much to send at once. Shorten it.",
  unknown_day: "There is no such day. Choose one from the list of days.",
  unknown_court: "There is no such court on this day. Reload the page.",
  unknown_match: "There is no such match. Go back to the desk.",
  unknown_player: "One of the players is no longer on the list. Choose again.",
  unknown_code: "There is no such code. Reload the page.",
  unknown_phone: "That phone is no longer in. Reload the page.",
  already_set_up: "An academy was set up here already. Sign in.",
  already_opened: "Charting has begun, and what it began with stays. It can no longer be changed.",
  stale_plan:
    "Somebody else saved this plan meanwhile, so nothing was written. Your changes are still on this page.",
  stale_watch:
    "Somebody else saved what is watched meanwhile, so nothing was written. Your choice is still on this page.",
  has_plan: "There is a plan already. Open it and change it.",
  no_demo: "There is no demo academy here. Load it first.",
  day_over: "This day is over, so a code for it would not work. Make a new day.",
  same_player: "The same player is named twice. Choose another.",
  not_a_lane_file:
    "This is not a file that a pad saved. Choose one named like courtloom-court-3-2026-05-30.json.",
  newer_file: "A newer pad saved this file. Update this server, then take it in.",
  bad_file: "This file is damaged or was changed. Nothing was taken in. Save it again on the phone.",
  bad_email: "This is not an e-mail address. Write it like name@club.example.",
  bad_name: "A name needs 1 to 80 characters, without control characters.",
  password_too_short: "The password is too short. Use at least 8 characters; 15 or more is better.",
  password_too_long: "The password is too long. Use at most 128 characters.",
  password_too_common:
    "This password is easily guessed. Choose another; three unrelated words make a good one.",
  email_taken: "There is an account with this e-mail address already. Sign in, or use another.",
  wrong_credentials: "The e-mail address or the password is wrong. Try again.",
  too_many_tries: "Too many tries. Wait 15 minutes, then try again.",
  unavailable: "The server cannot reach its data just now. Nothing was changed; try again in a moment.",
  unexpected: "Something went wrong on the server. Try again; if it stays so, tell whoever runs it.",
} as const satisfies Record<ErrorCode, string>;
