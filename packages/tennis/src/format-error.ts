/** Why a format, or the order of a doubles match, cannot be played. */
export type FormatError =
  | { readonly code: "not_an_object"; readonly member: string }
  | { readonly code: "missing_member"; readonly member: string; readonly expected: string }
  | { readonly code: "unknown_member"; readonly member: string; readonly known: readonly string[] }
  | {
      readonly code: "bad_member";
      readonly member: string;
      readonly expected: string;
      readonly got: unknown;
    }
  | { readonly code: "bad_doubles_order"; readonly reason: string };

const show = (value: unknown): string => JSON.stringify(value) ?? String(value);

/** A sentence for a person that says what to write instead. */
export function formatErrorText(error: FormatError): string {
  switch (error.code) {
    case "not_an_object":
      return `${error.member} must be an object with named members`;
    case "missing_member":
      return `${error.member} is missing: write ${error.expected}`;
    case "unknown_member":
      return `${error.member} is not a setting of a format; the settings are ${error.known.join(", ")}`;
    case "bad_member":
      return `${error.member} must be ${error.expected}, not ${show(error.got)}`;
    case "bad_doubles_order":
      return `the order of service in doubles ${error.reason}`;
  }
}
