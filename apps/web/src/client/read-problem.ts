/** Why something was not done: a sentence for the whole form, and one for each field to mend. */
export interface Problem {
  readonly sentence: string;
  readonly fields: Readonly<Record<string, string>>;
}

export const NO_CONNECTION = "No connection to the server. Check the network, then try again.";

/** Refusals that are about one field, so that they stand beside it. */
const FIELD_OF: Readonly<Record<string, string>> = {
  bad_email: "email",
  email_taken: "email",
  password_too_short: "password",
  password_too_long: "password",
  password_too_common: "password",
};

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

const textsOf = (value: unknown): Record<string, string> =>
  isRecord(value)
    ? Object.fromEntries(
        Object.entries(value).filter((entry): entry is [string, string] => typeof entry[1] === "string"),
      )
    : {};

/** What a failed call says to a person. A call that the server never answered means that it was not reached. */
export const readProblem = (error: unknown): Problem => {
  const data = isRecord(error) ? error.data : undefined;
  if (!isRecord(data) || !(error instanceof Error)) return { sentence: NO_CONNECTION, fields: {} };
  const field = typeof data.reason === "string" ? FIELD_OF[data.reason] : undefined;
  const fields = field === undefined ? textsOf(data.fields) : { [field]: error.message };
  return { sentence: error.message, fields };
};
