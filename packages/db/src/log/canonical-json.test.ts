import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "./canonical-json.ts";

const turned = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, member]) => [name, turned(member)]),
  );
};

describe("canonical text", () => {
  it("[ES6] sorts members at every depth and leaves absent ones out", () => {
    expect(canonicalJson({ b: [{ d: 1, c: "x" }, null], a: undefined, é: true, A: -0 })).toBe(
      '{"A":0,"b":[{"c":"x","d":1},null],"é":true}',
    );
  });

  it("[ES6] is the same for the same value in another order, and reads back as the value", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const text = canonicalJson(value);
        expect(canonicalJson(turned(value))).toBe(text);
        expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});
