import type { AlertKey, AlertLine } from "@courtloom/protocol";
import { type AlertsMirrorSnapshot, alertKeyText } from "@courtloom/sync";
import { describe, expect, it } from "vitest";
import { createKeptMarks } from "../kept-marks.ts";
import { alertLine } from "../testing/alert-line.ts";
import { createNoticeStore } from "./notice-store.ts";
import { createSwitchStore } from "./notice-switches.ts";

const memoryStorage = () => {
  const items = new Map<string, string>();
  return {
    items,
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, value: string) => void items.set(key, value),
  };
};
const full = {
  getItem: () => null,
  setItem: () => {
    throw new Error("QuotaExceededError");
  },
};

const episode = (no: number, more: Partial<AlertLine> = {}): AlertLine =>
  alertLine({ key: { ...alertLine().key, episode: no }, ...more });
const textOf = ({ key }: AlertLine) => alertKeyText(key);

/** Alerts as a mirror holds them, told by hand. */
const createSource = () => {
  const listeners = new Set<() => void>();
  let [told, lines]: [readonly AlertKey[], readonly AlertLine[]] = [[], []];
  return {
    get: () =>
      ({
        alerts: { told, lines: new Map(lines.map((line) => [textOf(line), line])) },
      }) as unknown as AlertsMirrorSnapshot,
    subscribe: (changed: () => void) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    become: (nowTold: readonly AlertKey[], nowLines: readonly AlertLine[]) => {
      [told, lines] = [nowTold, nowLines];
      for (const listener of listeners) listener();
    },
  };
};

const open = (source: ReturnType<typeof createSource>, storage: Parameters<typeof createSwitchStore>[0]) => {
  const heard = { count: 0 };
  const store = createNoticeStore({
    mirror: source,
    storage,
    account: "maren",
    present: () => {
      heard.count += 1;
    },
  });
  return { store, heard };
};

describe("notices on a device", () => {
  it("[AS22] are presented once each, also after a reload and on a second page", () => {
    const [source, storage] = [createSource(), memoryStorage()];
    const { store, heard } = open(source, storage);
    source.become([episode(1).key], [episode(1)]);
    source.become([episode(1).key], [episode(1, { strength: 0.8 })]);
    expect(store.get()).toEqual([textOf(episode(1))]);
    expect(heard.count).toBe(1);

    const again = open(source, storage);
    expect([again.store.get(), again.heard.count]).toEqual([[], 0]);
    source.become([episode(1).key, episode(2).key], [episode(1), episode(2)]);
    expect(store.get()).toEqual([textOf(episode(2)), textOf(episode(1))]);
    expect(again.store.get()).toEqual([]);
  });

  it("[AS22] that come together are one sound", () => {
    const source = createSource();
    const { store, heard } = open(source, memoryStorage());
    source.become([episode(1).key, episode(2).key], [episode(1), episode(2)]);
    expect([store.get().length, heard.count]).toEqual([2, 1]);
    store.dismiss(textOf(episode(1)));
    expect(store.get()).toEqual([textOf(episode(2))]);
  });

  it("[AS22] wait for the alert's line, and are not presented once it is over", () => {
    const source = createSource();
    const { store } = open(source, memoryStorage());
    source.become([episode(1).key, episode(2).key], []);
    expect(store.get()).toEqual([]);
    source.become([episode(1).key, episode(2).key], [episode(1, { state: "withdrawn" }), episode(2)]);
    expect(store.get()).toEqual([textOf(episode(2))]);
  });

  it("[AS22] are presented once by a page whose device keeps nothing", () => {
    const source = createSource();
    const { store, heard } = open(source, full);
    source.become([episode(1).key], [episode(1)]);
    source.become([episode(1).key], [episode(1, { strength: 0.7 })]);
    expect([store.get().length, heard.count]).toEqual([1, 1]);
  });

  it("[AS23] are silent until somebody turns sound or vibration on, which the device keeps", () => {
    const storage = memoryStorage();
    const store = createSwitchStore(storage);
    expect(store.get()).toEqual({ sound: false, vibration: false });
    store.set({ sound: true, vibration: false });
    expect(createSwitchStore(storage).get()).toEqual({ sound: true, vibration: false });
    storage.items.set("courtloom-notices", "[");
    expect(createSwitchStore(storage).get()).toEqual({ sound: false, vibration: false });
    expect(createSwitchStore(undefined).get()).toEqual({ sound: false, vibration: false });
  });
});

describe("unsent marks on a device", () => {
  const mark = (id: string) => ({ id, key: alertLine().key, mark: { kind: "seen" } as const });

  it("[AS3] are kept for the account and the day, and two pages do not lose each other's", () => {
    const storage = memoryStorage();
    const [one, two] = [createKeptMarks(storage, "maren", "d1"), createKeptMarks(storage, "maren", "d1")];
    one.put(mark("a"));
    two.put(mark("b"));
    one.remove("a");
    expect(createKeptMarks(storage, "maren", "d1").all()).toEqual([mark("b")]);
    expect(createKeptMarks(storage, "dana", "d1").all()).toEqual([]);
    expect(createKeptMarks(storage, "maren", "d2").all()).toEqual([]);
  });

  it("[AS3] last as long as the page where the device keeps nothing, and what is not readable is nothing", () => {
    for (const storage of [undefined, full]) {
      const kept = createKeptMarks(storage, "maren", "d1");
      kept.put(mark("a"));
      expect(kept.all()).toEqual([mark("a")]);
      kept.remove("a");
      expect(kept.all()).toEqual([]);
    }
    const storage = memoryStorage();
    storage.items.set("courtloom-marks-maren-d1", JSON.stringify([1, null, { id: "x" }, mark("a")]));
    expect(createKeptMarks(storage, "maren", "d1").all()).toEqual([mark("a")]);
  });
});
