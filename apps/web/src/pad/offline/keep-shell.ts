/**
 * Keeps the page at `path` and every script, style and font that it names, of one build, in the cache `name`.
 * All or nothing: the page comes last, and what was begun is deleted when anything is missing. The page is asked
 * for without cookies, so that it is the same for everybody. Runs in the worker, as text: nothing from outside
 * this function may be used in it. SPEC PD41.
 */
export const keepShell = async (caches: CacheStorage, name: string, path: string): Promise<void> => {
  const wanted = new Set<string>();
  const note = (text: string) => {
    const named = /(?:chunks|media)\/[\w.~-]+\.(?:js|css|woff2)(?![\w.])/g;
    for (const [file] of text.matchAll(named)) wanted.add(`/_next/static/${file}`);
  };
  const cache = await caches.open(name);
  try {
    const page = await fetch(path, { credentials: "omit", cache: "no-store" });
    if (!page.ok || page.redirected) throw new Error(`the pad's page answered ${page.status}`);
    note(await page.clone().text());
    // A set that grows is walked to its end: styles name fonts, scripts name scripts that come later.
    for (const file of wanted) {
      const response = await fetch(file);
      if (!response.ok) throw new Error(`${file} answered ${response.status}`);
      if (!file.endsWith(".woff2")) note(await response.clone().text());
      await cache.put(file, response);
    }
    await cache.put(path, page);
  } catch (error) {
    await caches.delete(name);
    throw error;
  }
};
