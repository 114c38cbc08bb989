import { describe, expect, it } from "vitest";
import { padLink } from "../desk/code-links.ts";
import { codeInFragment } from "./linked-code.ts";

describe("the code in a link", () => {
  it("[PD19] is the one that the desk put there", () => {
    expect(codeInFragment(new URL(padLink("https://club.example/", "ABC234")).hash)).toBe("ABC234");
    expect(codeInFragment("#code=abc234")).toBe("ABC234");
  });

  it("[PD19] is nothing else that an address may end in", () => {
    for (const other of [
      "",
      "#",
      "#code=",
      "#name=ABC234",
      "#code=%00",
      "#code=A&b=c",
      "#code=ABCDEFGHJKLMN",
    ])
      expect([other, codeInFragment(other)]).toEqual([other, undefined]);
  });
});
