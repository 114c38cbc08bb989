import { MAX_BATCH_BYTES } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { pointEntries, pointEntry } from "../testing/entries.ts";
import { readBatch } from "./read-batch.ts";

describe("a batch", () => {
  it("[LV18] keeps a bad entry aside under the number that its neighbours tell", () => {
    const [one, , three] = pointEntries(1, 5, 7);
    const read = readBatch([one, { rubbish: true }, three]);
    expect(read.ok && read.value).toEqual([
      { n: 5, entry: one },
      { n: 6, rejected: { code: "bad_shape", raw: '{"rubbish":true}' } },
      { n: 7, entry: three },
    ]);
    expect(readBatch([null, pointEntry(1, 2)])).toMatchObject({ value: [{ n: 1 }, { n: 2 }] });
    expect(readBatch([{ n: 3 }])).toMatchObject({ value: [{ n: 3, rejected: { code: "bad_shape" } }] });
  });

  it("[LV18] is refused whole when its numbers are missing or do not follow each other", () => {
    expect(readBatch([{}, "x"])).toEqual({ ok: false, error: "bad_shape" });
    expect(readBatch([pointEntry(1, 2), pointEntry(1, 4)])).toEqual({ ok: false, error: "bad_shape" });
    expect(readBatch([pointEntry(1, 2), pointEntry(1, 2)])).toEqual({ ok: false, error: "bad_shape" });
    expect(readBatch([7, pointEntry(1, 1)])).toEqual({ ok: false, error: "bad_shape" });
    expect(readBatch([{ n: 1_000_001 }])).toEqual({ ok: false, error: "bad_shape" });
    expect(readBatch([])).toEqual({ ok: false, error: "bad_shape" });
  });

  it("[LV18] is refused when it is too large or nested without end", () => {
    const long = { n: 1, text: "é".repeat(MAX_BATCH_BYTES / 2) };
    expect(readBatch([long])).toEqual({ ok: false, error: "too_large" });
    let deep: unknown = [];
    for (let i = 0; i < 200_000; i += 1) deep = [deep];
    expect(readBatch([{ n: 1, deep }]).ok).toBe(false);
  });
});
