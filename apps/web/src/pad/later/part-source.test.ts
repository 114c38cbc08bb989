import { describe, expect, it } from "vitest";
import { makePartSource } from "./part-source.ts";

const Part = () => null;

describe("a part that comes later", () => {
  it("[PD91] says that it is missing without a signal, comes when tried again, and is fetched once", async () => {
    let [asked, hasSignal] = [0, false];
    const source = makePartSource(async () => {
      asked += 1;
      if (!hasSignal) throw new Error("no signal");
      return Part;
    });
    expect([source.get(), await source.fetchNow(), source.get()]).toEqual([undefined, false, undefined]);
    hasSignal = true;
    expect([await source.fetchNow(), source.get()]).toEqual([true, Part]);
    expect([await source.fetchNow(), asked]).toEqual([true, 2]);
  });
});
