import { createServer, type IncomingHttpHeaders, type Server } from "node:http";
import { type AddressInfo, connect } from "node:net";
import type { Duplex } from "node:stream";
import { freePort } from "@courtloom/db/embedded";
import { Server as SocketServer } from "socket.io";
import { io, type Socket } from "socket.io-client";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { partFor } from "./carry.ts";
import { type FrontDoor, openFrontDoor } from "./front-door.ts";

interface Part {
  readonly server: Server;
  readonly port: number;
}

let door: FrontDoor;
let port: number;
const parts: { web: Part | undefined; live: Part | undefined } = { web: undefined, live: undefined };
const clients: Socket[] = [];
const liveSockets: Duplex[] = [];

async function servePart(name: string): Promise<Part> {
  const server = createServer((request, response) => {
    if (request.url === "/cut") request.socket.destroy();
    else response.end(JSON.stringify({ name, headers: request.headers }));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return { server, port: (server.address() as AddressInfo).port };
}

beforeEach(async () => {
  parts.web = await servePart("web");
  parts.live = await servePart("live");
  parts.live.server.on("upgrade", (_request, socket) => liveSockets.push(socket));
  const socketServer = new SocketServer(parts.live.server, { path: "/rt", addTrailingSlash: false });
  socketServer.on("connection", (socket) => {
    socket.emit("headers", socket.handshake.headers);
    socket.on("echo", (value: unknown, done: (value: unknown) => void) => done(value));
  });
  port = await freePort();
  const opened = await openFrontDoor({ port, host: "127.0.0.1", routeTo: (part) => parts[part]?.port });
  if (!opened.ok) throw new Error(opened.error.message);
  door = opened.value;
});
afterEach(async () => {
  for (const client of clients.splice(0)) client.close();
  await door.close();
  for (const part of Object.values(parts)) part?.server.close();
});

const ask = (path: string, headers: Record<string, string> = {}): Promise<Response> =>
  fetch(`http://127.0.0.1:${port}${path}`, { headers });

function openSocket(extraHeaders: Record<string, string> = {}): Socket {
  const socket = io(`http://127.0.0.1:${port}`, {
    path: "/rt",
    addTrailingSlash: false,
    transports: ["websocket"],
    reconnection: false,
    extraHeaders,
  });
  clients.push(socket);
  return socket;
}

/** What the front door answers to a bare upgrade request. */
function upgrade(path: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = "";
    const socket = connect(port, "127.0.0.1", () => {
      const lines = ["Host: x", "Connection: Upgrade", "Upgrade: websocket", "Sec-WebSocket-Version: 13"];
      socket.write(`GET ${path} HTTP/1.1\r\n${lines.join("\r\n")}\r\nSec-WebSocket-Key: AAAA\r\n\r\n`);
    });
    socket.on("data", (chunk) => {
      text += chunk.toString();
    });
    socket.on("end", () => resolve(text));
    socket.on("error", reject);
  });
}

describe("front door", () => {
  it.each([
    ["/", "web"],
    ["/rtx", "web"],
    ["/a/rt", "web"],
    ["/rt", "live"],
    ["/rt/", "live"],
    ["/rt?EIO=4", "live"],
    [undefined, "web"],
  ])("[ST12] %s belongs to %s", (url, part) => expect(partFor(url)).toBe(part));

  it("[ST12] hands requests to the part they belong to", async () => {
    expect(await (await ask("/board")).json()).toMatchObject({ name: "web" });
    expect(await (await ask("/rt/x")).json()).toMatchObject({ message: "Transport unknown" });
  });

  it("[ST12] carries a WebSocket", async () => {
    const socket = openSocket();
    expect(await socket.timeout(5000).emitWithAck("echo", { n: 1 })).toEqual({ n: 1 });
  });

  it("[ST13] replaces forwarded headers on both ways in", async () => {
    const claimed = {
      "x-forwarded-for": "10.9.8.7",
      "x-forwarded-proto": "https",
      forwarded: "for=10.9.8.7",
    };
    const { headers } = (await (await ask("/", claimed)).json()) as { headers: IncomingHttpHeaders };
    const socket = openSocket(claimed);
    const shaken = await new Promise<IncomingHttpHeaders>((resolve) => socket.once("headers", resolve));
    for (const seen of [headers, shaken]) {
      expect(seen["x-forwarded-for"]).toBe("127.0.0.1");
      expect(seen["x-forwarded-proto"]).toBe("http");
      expect(seen.forwarded).toBeUndefined();
      expect(seen["x-forwarded-host"]).toBe(`127.0.0.1:${port}`);
    }
  });

  it("[ST14] shows a page that asks again while web is down", async () => {
    parts.web?.server.close();
    parts.web = undefined;
    const page = await ask("/board", { accept: "text/html" });
    expect(page.status).toBe(503);
    expect(page.headers.get("retry-after")).toBe("2");
    expect(page.headers.get("cache-control")).toBe("no-store");
    expect(await page.text()).toContain('http-equiv="refresh"');
    const other = await ask("/api", { accept: "application/json" });
    expect(other.status).toBe(503);
    expect(await other.text()).not.toContain("<html");
  });

  it("[ST14] refuses an upgrade while live is down, and one that is nobody's", async () => {
    parts.live?.server.close();
    parts.live = undefined;
    expect(await upgrade("/rt?EIO=4&transport=websocket")).toMatch(/^HTTP\/1\.1 503 .*Retry-After: 2/s);
    expect(await upgrade("/elsewhere")).toMatch(/^HTTP\/1\.1 404 /);
  });

  it("[ST14] answers 503 when a part goes away in the middle of a request", async () => {
    expect((await ask("/cut")).status).toBe(503);
    parts.web?.server.close();
    parts.web?.server.closeAllConnections();
    expect((await ask("/")).status).toBe(503);
  });

  it("[ST14] lets a socket go when live dies, and goes on serving", async () => {
    const socket = openSocket();
    await socket.timeout(5000).emitWithAck("echo", 1);
    const gone = new Promise<string>((resolve) => socket.once("disconnect", resolve));
    for (const carried of liveSockets) carried.destroy();
    expect(await gone).toBe("transport close");
    expect((await ask("/")).status).toBe(200);
  });

  it("[ST19] says that its port is in use", async () => {
    const second = await openFrontDoor({ port, host: "127.0.0.1", routeTo: () => undefined });
    expect(second).toMatchObject({ ok: false, error: { code: "EADDRINUSE" } });
  });

  it("[ST16] cuts open sockets when it closes", async () => {
    const socket = openSocket();
    await socket.timeout(5000).emitWithAck("echo", 1);
    const gone = new Promise<string>((resolve) => socket.once("disconnect", resolve));
    await door.close();
    expect(await gone).toBe("transport close");
  });
});
