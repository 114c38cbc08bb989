/**
 * Deletes the caches of other builds. Called when the worker of `name` takes over, which it does only once its
 * own cache is whole. Runs in the worker, as text: nothing from outside this function may be used in it.
 */
export const dropOldShells = async (caches: CacheStorage, prefix: string, name: string): Promise<void> => {
  for (const held of await caches.keys()) {
    if (held.startsWith(prefix) && held !== name) await caches.delete(held);
  }
};
