import { describe, expect, it } from "vitest";
import { addressOf } from "./address-of.ts";

describe("address of a visitor", () => {
  it.each([
    ["192.0.2.7", "192.0.2.7"],
    ["203.0.113.9, 192.0.2.7", "192.0.2.7"],
    ["2001:db8::1", "2001:db8::1"],
    ["", ""],
  ])("[WB8] reads %j as %j", (header, address) => {
    expect(addressOf(new Headers(header === "" ? {} : { "x-forwarded-for": header }))).toBe(address);
  });

  it("[WB8] keeps no more than an address's length", () => {
    expect(addressOf(new Headers({ "x-forwarded-for": "9".repeat(5000) }))).toHaveLength(64);
  });
});
