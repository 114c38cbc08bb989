import { describe, expect, it } from "vitest";
import { EVERYTHING } from "./board-choice.ts";
import { createChoiceStore } from "./choice-store.ts";

const memoryStorage = () => {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
  };
};
const MINE = { filter: "courts", courts: ["c1", "c4"], players: [] } as const;

describe("the choice of a board", () => {
  it("[BD44] is there again after a reload, for the same account alone", () => {
    const storage = memoryStorage();
    createChoiceStore(storage, "maren", "day-1").set(MINE);
    expect(createChoiceStore(storage, "maren", "day-1").get()).toEqual(MINE);
    expect(createChoiceStore(storage, "tobias", "day-1").get()).toEqual(EVERYTHING);
  });

  it("[BD44] lasts as long as the page where the device keeps nothing, and says so", () => {
    const refusing = {
      ...memoryStorage(),
      setItem: () => {
        throw new DOMException("full", "QuotaExceededError");
      },
    };
    const store = createChoiceStore(refusing, "maren", "day-1");
    let told = 0;
    store.subscribe(() => {
      told += 1;
    });
    store.set(MINE);
    expect([store.get(), store.isKept(), told]).toEqual([MINE, false, 1]);
    expect(createChoiceStore(undefined, "maren", "day-1").isKept()).toBe(false);
  });
});
