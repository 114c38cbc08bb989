import { workerScript } from "../../pad/offline/worker-script.ts";
import { buildId } from "../../server/build-id.ts";

export const dynamic = "force-dynamic";

/** The pad's service worker, of the build that is served. Without a build there is none. */
export const GET = async (): Promise<Response> => {
  const id = await buildId();
  if (id === undefined) return new Response("There is no build.", { status: 404 });
  return new Response(workerScript(id), {
    headers: { "content-type": "text/javascript; charset=utf-8", "cache-control": "no-cache" },
  });
};
