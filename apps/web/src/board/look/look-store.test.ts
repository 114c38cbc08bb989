import type { Tile } from "@courtloom/protocol";
import type { BoardMirrorSnapshot } from "@courtloom/sync";
import { describe, expect, it } from "vitest";
import { createLookStore } from "./look-store.ts";

const tileAt = (state: Tile["state"]): Tile =>
  ({ courtId: "c1", matchId: "m1", state, score: null }) as unknown as Tile;

const start = () => {
  const kept = new Map<string, string>();
  const now = { ms: 0, hidden: false };
  const told = { mirror: () => {}, visibility: () => {} };
  let snapshot = { board: { day: undefined, courts: new Map() } } as unknown as BoardMirrorSnapshot;
  const show = (state: Tile["state"]) => {
    const courts = new Map([["c1", { tile: tileAt(state) }]]);
    snapshot = { board: { day: { dayId: "d1" }, courts } } as unknown as BoardMirrorSnapshot;
    told.mirror();
  };
  const open = () =>
    createLookStore({
      mirror: {
        get: () => snapshot,
        serverNowMs: () => 1_000_000 + now.ms,
        subscribe: (changed) => {
          told.mirror = changed;
          return () => {};
        },
      },
      storage: {
        getItem: (key) => kept.get(key) ?? null,
        setItem: (key, value) => void kept.set(key, value),
      },
      key: "look",
      visibility: {
        isHidden: () => now.hidden,
        onChange: (changed) => {
          told.visibility = changed;
          return () => {};
        },
      },
      monotonicMs: () => now.ms,
    });
  const hide = (hidden: boolean, laterMs: number) => {
    now.ms += laterMs;
    now.hidden = hidden;
    told.visibility();
  };
  return { open, show, hide, now };
};

describe("when somebody last looked", () => {
  it("[BD46] begins with the first board that is read", () => {
    const { open, show } = start();
    const store = open();
    expect(store.get()).toBeUndefined();
    show("waiting");
    expect(store.get()?.courts.c1?.state).toBe("waiting");
    show("playing");
    expect(store.get()?.courts.c1?.state).toBe("waiting");
  });

  it("[BD46] is when the page was hidden, unless it had been shown for a moment only", () => {
    const { open, show, hide } = start();
    const store = open();
    show("waiting");
    show("playing");
    hide(true, 60_000);
    expect(store.get()).toMatchObject({ atMs: 1_060_000, courts: { c1: { state: "playing" } } });
    show("suspended");
    hide(false, 300_000);
    hide(true, 3_000);
    expect(store.get()).toMatchObject({ atMs: 1_060_000, courts: { c1: { state: "playing" } } });
  });

  it("[BD46] is when it was marked as read, and outlives a reload", () => {
    const { open, show, now } = start();
    const store = open();
    show("playing");
    show("suspended");
    now.ms = 5_000;
    store.markRead();
    expect(store.get()?.courts.c1?.state).toBe("suspended");
    show("playing");
    expect(open().get()).toEqual(store.get());
  });
});
