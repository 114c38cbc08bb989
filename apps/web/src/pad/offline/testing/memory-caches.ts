/** The browser's caches in memory, as far as the worker uses them. */
export const memoryCaches = () => {
  const held = new Map<string, Map<string, Response>>();
  const caches = {
    open: async (name: string) => {
      const cache = held.get(name) ?? new Map<string, Response>();
      held.set(name, cache);
      return {
        put: async (path: string, response: Response) => void cache.set(path, response),
        match: async (path: string) => cache.get(path)?.clone(),
      };
    },
    keys: async () => [...held.keys()],
    delete: async (name: string) => held.delete(name),
  };
  return {
    caches: caches as unknown as CacheStorage,
    paths: (name: string) => [...(held.get(name)?.keys() ?? [])],
    names: () => [...held.keys()],
  };
};
