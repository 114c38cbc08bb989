import { once } from "node:events";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";

/** The least that can be kept and shown without a network: one document and a worker that answers with it. */
const PAGE = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Floor</title>
<p data-testid="score-A">0</p>
<script>navigator.serviceWorker.register("/worker.js")</script></html>`;

const WORKER = `
addEventListener("install", (event) => event.waitUntil(caches.open("floor").then((cache) => cache.add("/"))));
addEventListener("activate", (event) => event.waitUntil(clients.claim()));
addEventListener("fetch", (event) =>
  event.respondWith(caches.match(event.request).then((kept) => kept ?? fetch(event.request))));
`;

export interface OfflineFloor {
  readonly url: string;
  readonly stop: () => Promise<void>;
}

export const serveOfflineFloor = async (): Promise<OfflineFloor> => {
  const server = createServer((request, response) => {
    const isWorker = request.url === "/worker.js";
    response.setHeader("content-type", isWorker ? "text/javascript" : "text/html");
    response.end(isWorker ? WORKER : PAGE);
  });
  server.listen(0, "127.0.0.1");
  await once(server, "listening");
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    stop: async () => {
      server.closeAllConnections();
      server.close();
      await once(server, "close");
    },
  };
};
