import {
  createServer,
  type IncomingHttpHeaders,
  type IncomingMessage,
  request as plainRequest,
  type Server,
} from "node:http";
import { request as tlsRequest } from "node:https";
import type { AddressInfo } from "node:net";
import { freePort } from "@courtloom/db/embedded";
import { Server as SocketServer } from "socket.io";
import { io, type Socket } from "socket.io-client";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type FrontDoor, openFrontDoor } from "./front-door.ts";
import { httpsOrigin } from "./plain-door.ts";
import { certificateNames } from "./tls/certificate-names.ts";
import type { KeyPair } from "./tls/key-pair.ts";
import { makeAuthority, makeServerCertificate } from "./tls/make-certificates.ts";
import { parseTrustedProxies } from "./trusted-proxies.ts";

const names = certificateNames({ hostName: "courts-mini", addresses: [], publicHost: undefined });
const authority = await makeAuthority("courts-mini", Date.now());
const pair = await makeServerCertificate(authority, names, Date.now());

let door: FrontDoor;
let ports: { plain: number; tls: number };
const parts: Server[] = [];
const clients: Socket[] = [];

async function servePart(name: string): Promise<number> {
  const server = createServer((request, response) => {
    response.end(JSON.stringify({ name, url: request.url, headers: request.headers }));
  });
  parts.push(server);
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return (server.address() as AddressInfo).port;
}

async function open(servesTrust: boolean, trusted = ""): Promise<void> {
  const at = { web: await servePart("web"), live: await servePart("live") };
  const [, live] = parts;
  if (live === undefined) throw new Error("no live");
  const sockets = new SocketServer(live, { path: "/rt", addTrailingSlash: false });
  sockets.on("connection", (socket) => socket.emit("headers", socket.handshake.headers));
  const isTrusted = parseTrustedProxies(trusted);
  if (!isTrusted.ok) throw new Error(isTrusted.error);
  ports = { plain: await freePort(), tls: await freePort() };
  const opened = await openFrontDoor({
    port: ports.plain,
    host: "127.0.0.1",
    routeTo: (part) => at[part],
    isTrustedProxy: isTrusted.value,
    tls: { port: ports.tls, pair, fallback: `https://192.168.1.7:${ports.tls}`, servesTrust },
  });
  if (!opened.ok) throw new Error(opened.error.message);
  door = opened.value;
}
beforeEach(() => open(true));
afterEach(closeAll);

async function closeAll(): Promise<void> {
  for (const client of clients.splice(0)) client.close();
  await door.close();
  for (const part of parts.splice(0)) part.close();
}

interface Answer {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}
interface Question {
  readonly method?: string;
  readonly headers?: Record<string, string>;
}

function ask(
  secure: boolean,
  path: string,
  { method = "GET", headers = {} }: Question = {},
): Promise<Answer> {
  const port = secure ? ports.tls : ports.plain;
  const options = { host: "127.0.0.1", port, path, method, headers };
  return new Promise((resolve, reject) => {
    const take = (response: IncomingMessage): void => {
      let text = "";
      response.setEncoding("utf8");
      response.on("data", (chunk: string) => {
        text += chunk;
      });
      response.on("end", () =>
        resolve({ status: response.statusCode ?? 0, headers: response.headers, text }),
      );
    };
    const request = secure
      ? tlsRequest({ ...options, ca: authority.cert, agent: false }, take)
      : plainRequest({ ...options, agent: false }, take);
    request.on("error", reject);
    request.end();
  });
}
const seenBy = ({ text }: Answer): { name: string; url: string; headers: IncomingHttpHeaders } =>
  JSON.parse(text);

describe("front door with a certificate", () => {
  it("[ST26] carries requests to who trusts its authority, and says https to the parts", async () => {
    const { name, headers } = seenBy(await ask(true, "/board", { headers: { cookie: "a=b" } }));
    expect(name).toBe("web");
    expect(headers).toMatchObject({
      cookie: "a=b",
      host: `127.0.0.1:${ports.tls}`,
      "x-forwarded-proto": "https",
      "x-forwarded-for": "127.0.0.1",
    });
    await expect(fetch(`https://127.0.0.1:${ports.tls}/`)).rejects.toThrow("fetch failed");
  });

  it("[ST26] carries a WebSocket", async () => {
    const socket = io(`https://127.0.0.1:${ports.tls}`, {
      path: "/rt",
      addTrailingSlash: false,
      transports: ["websocket"],
      reconnection: false,
      ca: authority.cert,
    });
    clients.push(socket);
    const headers = await new Promise<IncomingHttpHeaders>((resolve, reject) => {
      socket.once("headers", resolve);
      socket.once("connect_error", reject);
    });
    expect(headers["x-forwarded-proto"]).toBe("https");
  });

  it.each(["/trust", "/trust?x=1", "/trust/courtloom.crt", "/_next/static/a.css", "/icon.svg"])(
    "[ST26] gives %s over plain http, without a cookie",
    async (path) => {
      const { name, url, headers } = seenBy(await ask(false, path, { headers: { cookie: "a=b" } }));
      expect([name, url]).toEqual(["web", path]);
      expect(headers.cookie).toBeUndefined();
      expect(headers["x-forwarded-proto"]).toBe("http");
    },
  );

  it.each([
    "/",
    "/pad?match=1",
    "/trusted",
    "/_next/image",
    "/rt?EIO=4",
    "//evil.example/x",
    "/%2e%2e/trust",
  ])("[ST26] sends %s to https of the same host, for now only", async (path) => {
    const { status, headers } = await ask(false, path);
    expect(status).toBe(307);
    expect(headers.location).toBe(`https://127.0.0.1:${ports.tls}${path}`);
    expect(headers["cache-control"]).toBe("no-store");
  });

  it("[ST26] takes nothing else over plain http", async () => {
    expect((await ask(false, "/trust", { method: "POST" })).status).toBe(403);
    expect((await ask(false, "/api/trpc/x", { method: "POST" })).text).toContain("Open the https address");
    const upgrade = { connection: "Upgrade", upgrade: "websocket" };
    expect((await ask(false, "/rt?EIO=4&transport=websocket", { headers: upgrade })).status).toBe(403);
  });

  it("[ST26] keeps nothing back on plain http with a certificate of one's own", async () => {
    await closeAll();
    await open(false);
    expect((await ask(false, "/trust")).status).toBe(307);
  });

  it.each([
    ["courts-mini.local:3000", "https://courts-mini.local:3443"],
    ["[fd00::7]:3000", "https://[fd00::7]:3443"],
    [undefined, "https://fallback"],
    ["evil.example/path", "https://fallback"],
    ["a b", "https://fallback"],
    ["user@evil.example", "https://fallback"],
  ])("[ST26] finds the way to https from the host %s", (host, origin) => {
    expect(httpsOrigin(host, 3443, "https://fallback")).toBe(origin);
  });

  it("[ST28] serves new connections with a renewed certificate", async () => {
    const other = await makeAuthority("court-2", Date.now());
    const renewed: KeyPair = await makeServerCertificate(other, names, Date.now());
    expect((await ask(true, "/")).status).toBe(200);
    door.useCertificate(renewed);
    await expect(ask(true, "/")).rejects.toThrow("unable to verify");
    door.useCertificate(pair);
    expect((await ask(true, "/")).status).toBe(200);
  });

  it("[ST19] says which port is in use, and lets the other one go", async () => {
    const free = await freePort();
    const tls = { port: ports.tls, pair, fallback: "https://x", servesTrust: true };
    const second = await openFrontDoor({ port: free, host: "127.0.0.1", routeTo: () => undefined, tls });
    expect(second).toMatchObject({ ok: false, error: { code: "EADDRINUSE", port: ports.tls } });
    const third = await openFrontDoor({ port: free, host: "127.0.0.1", routeTo: () => undefined });
    expect(third.ok).toBe(true);
    if (third.ok) await third.value.close();
  });

  it("[ST29] believes a trusted proxy on both ways in", async () => {
    await closeAll();
    await open(true, "127.0.0.0/8");
    const claimed = {
      "x-forwarded-for": "198.51.100.9",
      "x-forwarded-proto": "https",
      "x-forwarded-host": "courts.example",
    };
    const { headers } = seenBy(await ask(true, "/", { headers: claimed }));
    expect(headers).toMatchObject({ ...claimed, host: "courts.example" });
  });
});
