import { type Entry, foldLog, type LoggedEntry } from "@courtloom/match-log";
import { expect, type Page } from "@playwright/test";

export const foldOf = (log: readonly LoggedEntry[]) => {
  const folded = foldLog(log);
  if (!folded.ok) throw new Error(folded.error);
  return folded.value;
};

const byId = (entries: readonly Entry[]) => [...entries].sort((a, b) => a.id.localeCompare(b.id));

/** The server has exactly what was charted: nothing is missing, doubled or changed, and nothing stands aside. */
export const agrees = (log: readonly LoggedEntry[], charted: readonly Entry[], points: number): void => {
  expect(log.map(({ pos }) => pos)).toEqual(log.map((_, i) => i + 1));
  const fromPhones = log.filter(({ epoch }) => epoch !== 0).map(({ entry }) => entry);
  expect(byId(fromPhones)).toEqual(byId(charted));
  expect(foldOf(log).setAside).toEqual([]);
  expect(foldOf(log).points).toHaveLength(points);
};

/** Every entry that a phone holds, read from its browser's storage, by lane and number. */
export const entriesOnPhone = (page: Page): Promise<readonly Entry[]> =>
  page.evaluate(
    () =>
      new Promise<Entry[]>((resolve, reject) => {
        const opening = indexedDB.open("courtloom-outbox");
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const read = opening.result.transaction("entries").objectStore("entries").getAll();
          read.onerror = () => reject(read.error);
          read.onsuccess = () => {
            opening.result.close();
            resolve((read.result as { readonly entry: Entry }[]).map(({ entry }) => entry));
          };
        };
      }),
  );

/** Waits until the phone holds the pad's page and files whole, so that the next opening needs no network. */
export const untilKept = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    for (const name of await caches.keys()) {
      if (await (await caches.open(name)).match("/pad")) return;
    }
    throw new Error("the worker is ready and holds no page");
  });
