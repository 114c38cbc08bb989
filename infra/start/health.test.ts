import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { isHealthy, namesInstance } from "./health.ts";

let server: Server | undefined;
afterEach(() => server?.close());

async function serve(status: number, body: string): Promise<number> {
  const listening = createServer((_request, response) => response.writeHead(status).end(body));
  server = listening;
  await new Promise<void>((resolve) => listening.listen(0, "127.0.0.1", resolve));
  return (listening.address() as AddressInfo).port;
}

describe("health", () => {
  it("[ST10] takes only this start's instance id", async () => {
    const port = await serve(200, '{"instanceId":"ours","ok":true}');
    expect(await isHealthy(port, "ours")).toBe(true);
    expect(await isHealthy(port, "theirs")).toBe(false);
  });

  it("[ST10] does not count an answer with an error, nor none", async () => {
    const port = await serve(503, '{"instanceId":"ours"}');
    expect(await isHealthy(port, "ours")).toBe(false);
    server?.close();
    server?.closeAllConnections();
    expect(await isHealthy(port, "ours")).toBe(false);
  });

  it.each(["", "ours", '"ours"', "null", "{}", '{"a":{"b":"ours"}}'])(
    "[ST10] does not find it in %j",
    (text) => {
      expect(namesInstance(text, "ours")).toBe(false);
    },
  );
});
