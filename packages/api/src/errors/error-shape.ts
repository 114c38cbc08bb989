import type { TRPCDefaultErrorShape, TRPCError } from "@trpc/server";
import { ZodError } from "zod";
import type { ErrorCode } from "./error-code.ts";
import { ERROR_TEXT } from "./error-text.ts";
import { Failure } from "./failure.ts";

/** What the browser gets with an error: our own code, and a sentence for each field that was refused. */
export interface ErrorData {
  readonly code: TRPCError["code"];
  readonly httpStatus: number;
  readonly reason: ErrorCode;
  /** By the field's path, such as "name" or "sides.A.0.name"; there with `bad_input` only. */
  readonly fields?: Readonly<Record<string, string>>;
}

/** Errors that tRPC itself makes. What is not named here is our fault and says nothing of itself. */
const OWN: Partial<Record<TRPCError["code"], ErrorCode>> = {
  PARSE_ERROR: "bad_input",
  BAD_REQUEST: "bad_input",
  NOT_FOUND: "not_found",
  METHOD_NOT_SUPPORTED: "wrong_method",
  UNSUPPORTED_MEDIA_TYPE: "not_json",
  PAYLOAD_TOO_LARGE: "too_large",
};

const reasonOf = (error: TRPCError): ErrorCode =>
  error.cause instanceof Failure ? error.cause.reason : (OWN[error.code] ?? "unexpected");

const fieldsOf = (cause: unknown): Readonly<Record<string, string>> | undefined => {
  if (!(cause instanceof ZodError)) return undefined;
  const entries = cause.issues.map(({ path, message }) => [path.map(String).join("."), message] as const);
  // The first thing said about a field is the one to mend first.
  return Object.fromEntries(entries.reverse());
};

/** The shape of every error that leaves the server: no stack, no path, no message but ours. */
export const shapeError = ({
  shape,
  error,
}: {
  readonly shape: TRPCDefaultErrorShape;
  readonly error: TRPCError;
}): { readonly code: number; readonly message: string; readonly data: ErrorData } => {
  const reason = reasonOf(error);
  const fields = fieldsOf(error.cause);
  return {
    code: shape.code,
    message: ERROR_TEXT[reason],
    data: {
      code: shape.data.code,
      httpStatus: shape.data.httpStatus,
      reason,
      ...(fields === undefined ? {} : { fields }),
    },
  };
};
