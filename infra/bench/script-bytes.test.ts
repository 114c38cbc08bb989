import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { addBytes, inlineBytes, scriptFileBytes } from "./script-bytes.ts";

const SCRIPT = "const say = () => 'court';\n".repeat(200);

const server = createServer((request, response) => {
  if (request.url === "/gone.js") return response.writeHead(404).end();
  if (request.url === "/plain.js") return response.end(SCRIPT);
  const packed = request.headers["accept-encoding"]?.includes("gzip");
  response.writeHead(200, packed ? { "content-encoding": "gzip" } : {});
  return response.end(packed ? gzipSync(SCRIPT) : SCRIPT);
});
let url = "";

beforeAll(async () => {
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  url = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterAll(() => server.close());

describe("counting script", () => {
  it("[BN4] counts a file as it is sent, compressed, and as it is read", async () => {
    const bytes = await scriptFileBytes(`${url}/packed.js`);
    expect(bytes).toEqual({ transferred: gzipSync(SCRIPT).length, decoded: SCRIPT.length });
    expect(bytes.transferred).toBeLessThan(SCRIPT.length / 10);
  });

  it("[BN4] counts a file that is not compressed at its full size", async () => {
    expect(await scriptFileBytes(`${url}/plain.js`)).toEqual({
      transferred: SCRIPT.length,
      decoded: SCRIPT.length,
    });
  });

  it("[BN4] never counts a file that was not sent as nothing", async () => {
    await expect(scriptFileBytes(`${url}/gone.js`)).rejects.toThrow("answered 404");
  });

  it("[BN4] counts script within the document, and none as none", () => {
    expect(inlineBytes([])).toEqual({ transferred: 0, decoded: 0 });
    expect(inlineBytes(["ä"]).decoded).toBe(2);
    expect(addBytes([{ transferred: 1, decoded: 3 }, inlineBytes([])])).toEqual({
      transferred: 1,
      decoded: 3,
    });
  });
});
