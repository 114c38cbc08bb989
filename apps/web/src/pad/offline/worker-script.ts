import { answerFromShell } from "./answer-from-shell.ts";
import { dropOldShells } from "./drop-old-shells.ts";
import { keepShell } from "./keep-shell.ts";
import { SHELL_CACHE_PREFIX, SHELL_PATH } from "./shell-name.ts";

/**
 * The service worker of one build, as a script of its own: three functions that use nothing but their arguments,
 * and the events that call them. It takes over from an older one when no pad is open, or when the only open one
 * asks for it as it opens, so never under a person who charts. SPEC PD41, PD42.
 */
export const workerScript = (buildId: string): string => {
  const text = JSON.stringify;
  return `"use strict";
const NAME = ${text(SHELL_CACHE_PREFIX + buildId)}, PREFIX = ${text(SHELL_CACHE_PREFIX)}, PATH = ${text(SHELL_PATH)};
const keepShell = ${keepShell};
const dropOldShells = ${dropOldShells};
const answerFromShell = ${answerFromShell};
self.addEventListener("install", (event) => event.waitUntil(keepShell(caches, NAME, PATH)));
self.addEventListener("activate", (event) => event.waitUntil(dropOldShells(caches, PREFIX, NAME)));
self.addEventListener("fetch", (event) => {
  const answer = new URL(event.request.url).origin === location.origin && answerFromShell(caches, NAME, PATH, event.request);
  if (answer) event.respondWith(answer);
});
self.addEventListener("message", (event) => {
  const takeOver = async () => {
    const open = await clients.matchAll({ type: "window", includeUncontrolled: true });
    const pads = open.filter((each) => new URL(each.url).pathname === PATH);
    if (event.data === "takeOver" || pads.length < 2) await self.skipWaiting();
  };
  if (event.data === "takeOver" || event.data === "takeOverAlone") event.waitUntil(takeOver());
});
`;
};
