import { afterAll, beforeAll, describe } from "vitest";
import { appendsContract } from "./entry-store-appends.contract.ts";
import { handOversContract } from "./entry-store-hand-overs.contract.ts";
import { lanesContract } from "./entry-store-lanes.contract.ts";
import { readingContract } from "./entry-store-reading.contract.ts";
import { createStoreBench, type StoreUnderTest } from "./testing/store-bench.ts";

/** What every entry store does, wherever it keeps its entries. */
export function entryStoreContract(name: string, make: () => Promise<StoreUnderTest>): void {
  describe(`entry store: ${name}`, () => {
    let under: StoreUnderTest;
    beforeAll(async () => {
      under = await make();
    });
    afterAll(() => under.close());
    const bench = createStoreBench(() => under);
    lanesContract(bench);
    handOversContract(bench);
    appendsContract(bench);
    readingContract(bench);
  });
}
