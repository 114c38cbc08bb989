import { describe, expect, it } from "vitest";
import { foldsBefore } from "./folds-before.ts";

describe("where a phone folds courts", () => {
  it("[BD43] says which are not shown, run by run and in their order", () => {
    const order = ["1", "2", "3", "4", "5", "6"];
    const folds = (...quiet: string[]) => [...foldsBefore(order, new Set(quiet), Number)];
    expect(folds()).toEqual([]);
    expect(folds("1", "3", "4", "6")).toEqual([
      ["1", "Court 1 not shown"],
      ["3", "Courts 3 to 4 not shown"],
      ["6", "Court 6 not shown"],
    ]);
    expect(folds(...order)).toEqual([["1", "Courts 1 to 6 not shown"]]);
  });
});
