/** What the worker looks at in a request. */
export type ShellRequest = Pick<Request, "method" | "mode" | "url">;

/**
 * The kept page for an opening of the pad and the kept files for what it loads, else the network; `undefined`
 * for everything that is not the worker's: other pages, procedures, anything that changes something. Nothing is
 * kept here. Runs in the worker, as text: nothing from outside this function may be used in it. SPEC PD41.
 */
export const answerFromShell = (
  caches: CacheStorage,
  name: string,
  path: string,
  request: ShellRequest,
): Promise<Response> | undefined => {
  const { pathname } = new URL(request.url);
  const isPage = request.mode === "navigate" && pathname === path;
  if (request.method !== "GET" || !(isPage || pathname.startsWith("/_next/static/"))) return undefined;
  const answer = async () => {
    const cache = await caches.open(name);
    return (await cache.match(pathname, { ignoreVary: true })) ?? fetch(request as Request);
  };
  return answer();
};
