import { createHash, X509Certificate } from "node:crypto";
import { readFileSync } from "node:fs";
import { request } from "node:https";
import type { RunningProduct } from "../fixtures/product.ts";

export interface HttpsAnswer {
  readonly status: number;
  readonly cookies: readonly string[];
  readonly text: string;
}

export interface HttpsQuestion {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: unknown;
}

/** The local authority's certificate, as a device fetches it before it trusts anything. */
export const fetchAuthority = async (
  product: RunningProduct,
): Promise<{ type: string | null; pem: string }> => {
  const response = await fetch(`${product.plainUrl}/trust/courtloom.crt`);
  return { type: response.headers.get("content-type"), pem: await response.text() };
};

/** Asks over https as a client that trusts this authority and no other; rejects where the chain does not hold. */
export const askOverHttps = (
  product: RunningProduct,
  ca: string | undefined,
  path: string,
  { method = "GET", headers = {}, body }: HttpsQuestion = {},
): Promise<HttpsAnswer> =>
  new Promise((resolve, reject) => {
    const sent = request(
      `${product.url}${path}`,
      { method, headers, agent: false, ...(ca ? { ca } : {}) },
      (answer) => {
        let text = "";
        answer.setEncoding("utf8");
        answer.on("data", (chunk: string) => {
          text += chunk;
        });
        answer.on("end", () =>
          resolve({ status: answer.statusCode ?? 0, cookies: answer.headers["set-cookie"] ?? [], text }),
        );
      },
    );
    sent.on("error", reject);
    sent.end(body === undefined ? undefined : JSON.stringify(body));
  });

/** What makes Chromium take the front door's key as trusted, and no other: a stand-in for the device's settings. */
export const trustingArgument = (product: RunningProduct): string => {
  const { publicKey } = new X509Certificate(readFileSync(`${product.dataDir}/tls/server.pem`));
  const spki = publicKey.export({ type: "spki", format: "der" });
  return `--ignore-certificate-errors-spki-list=${createHash("sha256").update(spki).digest("base64")}`;
};
