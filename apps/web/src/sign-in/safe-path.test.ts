import { describe, expect, it } from "vitest";
import { refusalSentence } from "./account-calls.ts";
import { safePath } from "./safe-path.ts";

describe("after signing in", () => {
  it.each(["/desk", "/desk/1?x=2", "/"])("[WB5] goes to the page %s of this site", (path) => {
    expect(safePath(path)).toBe(path);
  });

  it.each([
    undefined,
    "",
    "desk",
    "//evil.example",
    "/\\evil.example",
    "https://evil.example/",
    "/\t/evil.example",
    "javascript:alert(1)",
  ])("[WB5] goes to the start instead of %j", (wish) => {
    expect(safePath(wish)).toBe("/");
  });

  it("[WB5] says the same for a wrong address and a wrong password, and something for every other refusal", () => {
    expect(refusalSentence("wrong_credentials")).toContain("or the password");
    for (const odd of ["toString", "__proto__", undefined, 7])
      expect(refusalSentence(odd)).toContain("Reload");
  });
});
