import { describe, expect, it } from "vitest";
import { createSubscriptions } from "./subscriptions.ts";

describe("what a connection follows", () => {
  it("[LV24] is at most a hundred matches and days, and ends with the connection", () => {
    const ended: string[] = [];
    const subscriptions = createSubscriptions();
    const add = (key: string) => subscriptions.add(key, () => void ended.push(key));
    const added = Array.from({ length: 101 }, (_, i) => add(`court/${i}`));
    expect(added.filter(Boolean)).toHaveLength(100);
    expect(add("court/0")).toBe(true);
    subscriptions.end("court/0");
    subscriptions.end("court/0");
    expect(ended).toEqual(["court/0"]);
    expect(subscriptions.has("court/0")).toBe(false);
    subscriptions.close();
    expect(ended).toHaveLength(100);
    expect(add("court/0")).toBe(false);
  });
});
