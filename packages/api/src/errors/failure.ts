import { TRPCError } from "@trpc/server";
import type { ErrorCode } from "./error-code.ts";
import { ERROR_TEXT } from "./error-text.ts";

/** The one place where a code becomes a status. */
const STATUS = {
  bad_input: "BAD_REQUEST",
  signed_out: "UNAUTHORIZED",
  code_expired: "UNAUTHORIZED",
  forbidden: "FORBIDDEN",
  forbidden_origin: "FORBIDDEN",
  not_found: "NOT_FOUND",
  wrong_method: "METHOD_NOT_SUPPORTED",
  not_json: "UNSUPPORTED_MEDIA_TYPE",
  too_large: "PAYLOAD_TOO_LARGE",
  unknown_day: "NOT_FOUND",
  unknown_court: "NOT_FOUND",
  unknown_match: "NOT_FOUND",
  unknown_player: "NOT_FOUND",
  unknown_code: "NOT_FOUND",
  unknown_phone: "NOT_FOUND",
  already_set_up: "CONFLICT",
  already_opened: "CONFLICT",
  stale_plan: "CONFLICT",
  has_plan: "CONFLICT",
  stale_watch: "CONFLICT",
  no_demo: "NOT_FOUND",
  day_over: "CONFLICT",
  same_player: "UNPROCESSABLE_CONTENT",
  not_a_lane_file: "UNPROCESSABLE_CONTENT",
  newer_file: "UNPROCESSABLE_CONTENT",
  bad_file: "UNPROCESSABLE_CONTENT",
  bad_email: "UNPROCESSABLE_CONTENT",
  bad_name: "UNPROCESSABLE_CONTENT",
  password_too_short: "UNPROCESSABLE_CONTENT",
  password_too_long: "UNPROCESSABLE_CONTENT",
  password_too_common: "UNPROCESSABLE_CONTENT",
  email_taken: "CONFLICT",
  wrong_credentials: "UNAUTHORIZED",
  too_many_tries: "TOO_MANY_REQUESTS",
  unavailable: "SERVICE_UNAVAILABLE",
  unexpected: "INTERNAL_SERVER_ERROR",
} as const satisfies Record<ErrorCode, TRPCError["code"]>;

/** An expected failure on its way out; carries its code through tRPC, which knows only its own. */
export class Failure extends Error {
  override readonly name = "Failure";
  readonly reason: ErrorCode;
  constructor(reason: ErrorCode) {
    super(ERROR_TEXT[reason]);
    this.reason = reason;
  }
}

/** To be thrown by a procedure. */
export const failure = (reason: ErrorCode): TRPCError =>
  new TRPCError({ code: STATUS[reason], message: ERROR_TEXT[reason], cause: new Failure(reason) });
