import { afterEach, describe, expect, it, vi } from "vitest";
import { answerFromShell } from "./answer-from-shell.ts";
import { dropOldShells } from "./drop-old-shells.ts";
import { keepShell } from "./keep-shell.ts";
import { memoryCaches } from "./testing/memory-caches.ts";
import { workerScript } from "./worker-script.ts";

const PAGE = `<link href="/_next/static/chunks/a1-~.css"><script nonce="n" src="/_next/static/chunks/m.js"></script>
<script nonce="n">push(["static/chunks/flight.js"])</script>`;
const FILES: Readonly<Record<string, string>> = {
  "/pad": PAGE,
  "/_next/static/chunks/a1-~.css":
    "@font-face{src:url(../media/f-latin.woff2) format('woff2'),url(../media/f-latin.woff)}",
  "/_next/static/chunks/m.js": 'load("static/chunks/later.js","chunks/x.js.map")',
  "/_next/static/chunks/flight.js": "",
  "/_next/static/chunks/later.js": "",
  "/_next/static/media/f-latin.woff2": "font",
};

const serve = (files: Readonly<Record<string, string>>) => {
  const asked: (readonly [string, RequestInit | undefined])[] = [];
  const fetch = async (path: string, init?: RequestInit) => {
    asked.push([path, init]);
    return path in files ? new Response(files[path]) : new Response("", { status: 404 });
  };
  vi.stubGlobal("fetch", fetch);
  return asked;
};

afterEach(() => vi.unstubAllGlobals());

describe("the pad's worker", () => {
  it("[PD41] keeps the page, asked for without cookies, and every file that it names, also indirectly", async () => {
    const { caches, paths } = memoryCaches();
    const asked = serve(FILES);
    await keepShell(caches, "courtloom-pad-b1", "/pad");
    expect(paths("courtloom-pad-b1").sort()).toEqual(Object.keys(FILES).sort());
    expect(paths("courtloom-pad-b1").at(-1)).toBe("/pad");
    expect(asked[0]).toEqual(["/pad", { credentials: "omit", cache: "no-store" }]);
  });

  it("[PD41] keeps nothing at all when one file is missing", async () => {
    const { caches, names } = memoryCaches();
    const { "/_next/static/media/f-latin.woff2": _, ...some } = FILES;
    serve(some);
    await expect(keepShell(caches, "courtloom-pad-b1", "/pad")).rejects.toThrow("f-latin.woff2 answered 404");
    expect(names()).toEqual([]);
  });

  it("[PD41] answers openings of the pad and its files, and leaves all else to the network", async () => {
    const { caches } = memoryCaches();
    serve(FILES);
    await keepShell(caches, "courtloom-pad-b1", "/pad");
    const ask = (path: string, mode: RequestMode = "cors", method = "GET") =>
      answerFromShell(caches, "courtloom-pad-b1", "/pad", {
        url: `http://club.example${path}`,
        mode,
        method,
      });
    const text = async (path: string, mode?: RequestMode) => (await ask(path, mode))?.text();
    for (const opening of ["/pad", "/pad?match=7", "/pad#code=ABC234"]) {
      expect(await text(opening, "navigate")).toBe(PAGE);
    }
    expect(await text("/_next/static/media/f-latin.woff2")).toBe("font");
    const others = ["/api/courtside", "/api/trpc/day.list", "/pad?_rsc=1", "/healthz", "/icons/pad.svg"];
    for (const path of others) expect(ask(path), path).toBeUndefined();
    for (const path of ["/", "/desk", "/padfoot", "/pad/x"]) expect(ask(path, "navigate")).toBeUndefined();
    expect(ask("/pad", "navigate", "POST")).toBeUndefined();
  });

  it("[PD41] asks the network for a file of another build", async () => {
    const { caches } = memoryCaches();
    const asked = serve({ ...FILES });
    await keepShell(caches, "courtloom-pad-b1", "/pad");
    const request = { url: "http://club.example/_next/static/chunks/new.js", mode: "cors", method: "GET" };
    const answer = await answerFromShell(caches, "courtloom-pad-b1", "/pad", request as Request);
    expect(answer?.status).toBe(404);
    expect(asked.at(-1)?.[0]).toBe(request);
  });

  it("[PD42] deletes the pads of other builds when it takes over, and nothing else", async () => {
    const { caches, names } = memoryCaches();
    for (const name of ["courtloom-pad-b1", "courtloom-pad-b2", "else"]) await caches.open(name);
    await dropOldShells(caches, "courtloom-pad-", "courtloom-pad-b2");
    expect(names()).toEqual(["courtloom-pad-b2", "else"]);
  });

  it("[PD42] is a script of its own, another one for each build, that takes over only when asked or alone", async () => {
    expect(workerScript("b1")).not.toBe(workerScript("b2"));
    const heard = new Map<string, (event: unknown) => void>();
    let skipped = 0;
    let pads = 2;
    const scope = {
      addEventListener: (name: string, handler: (event: unknown) => void) => heard.set(name, handler),
      skipWaiting: async () => {
        skipped += 1;
      },
    };
    const windows = () => Array.from({ length: pads }, () => ({ url: "http://club.example/pad?match=1" }));
    const clients = { matchAll: async () => [...windows(), { url: "http://club.example/desk" }] };
    const run = new Function("self", "caches", "clients", "location", workerScript("b1"));
    run(scope, memoryCaches().caches, clients, { origin: "http://club.example" });
    expect([...heard.keys()]).toEqual(["install", "activate", "fetch", "message"]);
    const say = async (data: unknown) => {
      const jobs: Promise<unknown>[] = [];
      heard.get("message")?.({ data, waitUntil: (job: Promise<unknown>) => jobs.push(job) });
      await Promise.all(jobs);
      return skipped;
    };
    expect(await say("else")).toBe(0);
    expect(await say("takeOverAlone")).toBe(0);
    expect(await say("takeOver")).toBe(1);
    pads = 1;
    expect(await say("takeOverAlone")).toBe(2);
  });
});
