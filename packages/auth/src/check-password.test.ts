import { describe, expect, it } from "vitest";
import { checkPassword, LONGEST_PASSWORD, SHORTEST_PASSWORD } from "./check-password.ts";

const OWN = ["ada.finch@curlew-reach.example", "ada.finch", "Ada Finch"];
const judge = (password: string): string => {
  const judged = checkPassword(password, OWN);
  return judged.ok ? "ok" : judged.error;
};

describe("a new password", () => {
  it.each([
    "tide tables",
    "correct-ish horse",
    "x7!kQ2#z",
    "péché mignon 3",
    "🎾 over the net",
    "Kestrel88Heron",
  ])("[AU3] may be %s", (password) => expect(judge(password)).toBe("ok"));

  it.each([
    "password",
    "Password1",
    "PASSWORD123!",
    "123qwerty123",
    "12345678",
    "123456789012",
    "98765432",
    "abcdefgh",
    "aaaaaaaa",
    "abababab",
    "1q2w3e4r",
    "tenniscourt",
    "Courtloom2026",
    "ada.finch@curlew-reach.example",
    "Ada.Finch",
    "ada finch",
    "Ada Finch 2014",
    "!!!!!!!!!!",
  ])("[AU3] may not be %s: everybody would try it", (password) =>
    expect(judge(password)).toBe("password_too_common"),
  );

  it("[AU3] has 8 to 128 characters, counted as people count them", () => {
    expect(SHORTEST_PASSWORD).toBe(8);
    expect(LONGEST_PASSWORD).toBeGreaterThanOrEqual(64);
    expect(judge("x7!kQ2#")).toBe("password_too_short");
    expect(judge("🎾🎾🎾🎾")).toBe("password_too_short");
    expect(judge("xyz!".repeat(32))).toBe("ok");
    expect(judge(`${"xyz!".repeat(32)}a`)).toBe("password_too_long");
  });
});
