import { get } from "node:http";
import { brotliDecompressSync, gunzipSync, gzipSync } from "node:zlib";

/** Bytes of JavaScript: as they cross the network, and as the engine reads them. */
export interface ScriptBytes {
  readonly transferred: number;
  readonly decoded: number;
}

const DECODERS: Readonly<Record<string, (body: Buffer) => Buffer>> = {
  identity: (body) => body,
  gzip: gunzipSync,
  br: brotliDecompressSync,
};

/** What a browser on plain http says it can read. */
const ACCEPTED = "gzip, deflate";

/**
 * One script file, asked for as a browser asks; the body alone, without headers. Rejects when the server does not
 * answer with 200 or encodes in a way that was not asked for.
 */
export const scriptFileBytes = (url: string): Promise<ScriptBytes> =>
  new Promise((resolve, reject) => {
    const request = get(url, { headers: { "accept-encoding": ACCEPTED }, agent: false }, (response) => {
      const chunks: Buffer[] = [];
      response.on("data", (chunk: Buffer) => chunks.push(chunk));
      response.once("error", reject);
      response.once("end", () => {
        const body = Buffer.concat(chunks);
        const decode = DECODERS[response.headers["content-encoding"] ?? "identity"];
        if (response.statusCode !== 200 || !decode)
          return reject(
            new Error(`${url} answered ${response.statusCode} in ${response.headers["content-encoding"]}`),
          );
        resolve({ transferred: body.length, decoded: decode(body).length });
      });
    });
    request.once("error", reject);
  });

/** Script within a document, whose compressed share cannot be told apart there: compressed alone instead. */
export const inlineBytes = (scripts: readonly string[]): ScriptBytes => {
  const text = scripts.join("\n");
  return {
    transferred: text === "" ? 0 : gzipSync(text).length,
    decoded: Buffer.byteLength(text),
  };
};

export const addBytes = (parts: readonly ScriptBytes[]): ScriptBytes => ({
  transferred: parts.reduce((sum, part) => sum + part.transferred, 0),
  decoded: parts.reduce((sum, part) => sum + part.decoded, 0),
});
