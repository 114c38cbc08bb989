import { describe, expect, it } from "vitest";
import { NO_CONNECTION, readProblem } from "./read-problem.ts";

const refused = (message: string, data: unknown) => Object.assign(new Error(message), { data });

describe("what a refused call says", () => {
  it("[WB6] puts each field's sentence beside its field", () => {
    const problem = readProblem(
      refused("Mend the marked field.", {
        reason: "bad_input",
        fields: { name: "The name is missing.", odd: 7 },
      }),
    );
    expect(problem).toEqual({ sentence: "Mend the marked field.", fields: { name: "The name is missing." } });
  });

  it("[WB6] puts what is wrong with a password beside the password", () => {
    expect(readProblem(refused("Too short.", { reason: "password_too_short" })).fields).toEqual({
      password: "Too short.",
    });
  });

  it.each([new TypeError("Failed to fetch"), undefined, "x", refused("x", null)])(
    "[WB6] says that the server was not reached when it did not answer: %s",
    (error) => {
      expect(readProblem(error)).toEqual({ sentence: NO_CONNECTION, fields: {} });
    },
  );
});
