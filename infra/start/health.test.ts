import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterEach, describe, expect, it } from "vitest";
import { askHealth, namesInstance } from "./health.ts";

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
    expect(await askHealth(port, "ours")).toBe("well");
    expect(await askHealth(port, "theirs")).toBe("unwell");
  });

  it("[ST10] tells an answer with an error from none", async () => {
    const port = await serve(503, '{"instanceId":"ours"}');
    expect(await askHealth(port, "ours")).toBe("unwell");
    server?.close();
    server?.closeAllConnections();
    expect(await askHealth(port, "ours")).toBe("silent");
  });

  it.each(["", "ours", '"ours"', "null", "{}", '{"a":{"b":"ours"}}'])(
    "[ST10] does not find it in %j",
    (text) => {
      expect(namesInstance(text, "ours")).toBe(false);
    },
  );
});
