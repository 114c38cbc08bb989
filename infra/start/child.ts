import type { ChildProcess } from "node:child_process";
import { fallsAfter, pauseBeforeStartMs } from "./backoff.ts";
import type { ChildSpec } from "./child-spec.ts";
import type { Say } from "./say.ts";
import { type Ended, endProcess, spawnChild } from "./spawn-child.ts";
import { watchHealth } from "./watch-health.ts";

export interface ChildContext {
  readonly instanceId: string;
  /** Folder for `<name>.log`. */
  readonly logDir: string;
  /** Asked at each start. */
  readonly env: () => Readonly<Record<string, string>>;
  readonly tell: Say;
  readonly onMessage: (message: unknown) => void;
  readonly onStarted: (name: string, pid: number | undefined) => void;
}

export interface Child {
  readonly name: string;
  readonly port: number | undefined;
  /** True while it runs and, if it serves, has answered with our instance id. */
  readonly isUp: () => boolean;
  /** False once it was stopped, could not be started, or has done its work. */
  readonly isKept: () => boolean;
  /** Resolves at the first time it is up; rejects with its last lines if it cannot be started at all. */
  readonly firstUp: Promise<void>;
  /** Ends the process, which is then started anew, for instance with other settings. */
  readonly restart: () => void;
  /** Ends it: asks, and after 5 s insists. It is not started again. */
  readonly stop: () => Promise<void>;
}

/** So many falls before it was ever up mean that it cannot be started. */
const FALLS_AT_FIRST = 4;

/** Starts a child and keeps it running until `stop`. */
export function createChild(spec: ChildSpec, context: ChildContext): Child {
  const first = Promise.withResolvers<void>();
  // Whoever waits for it sees the rejection; nobody waiting is not an error of its own.
  first.promise.catch(() => undefined);
  const state = {
    up: false,
    wasUp: false,
    kept: true,
    restarting: false,
    falls: 0,
    process: undefined as ChildProcess | undefined,
  };
  let timer: NodeJS.Timeout | undefined;

  const begin = (): void => {
    const began = performance.now();
    const run = spawnChild(spec, context);
    state.process = run.child;
    context.onStarted(spec.name, run.child.pid);
    const watching = new AbortController();
    void watchHealth(spec, context, run.child, watching.signal, () => {
      state.up = true;
      state.wasUp = true;
      first.resolve();
    });
    run.ended.then((how) => {
      watching.abort();
      state.up = false;
      state.process = undefined;
      onEnd(how, performance.now() - began);
    });
  };
  const onEnd = (how: Ended, ranMs: number): void => {
    const isDone = !spec.endless && how.code === 0 && !state.restarting;
    state.restarting = false;
    state.kept &&= !isDone;
    if (!state.kept) {
      first.resolve();
      return;
    }
    state.falls = fallsAfter(state.falls, ranMs);
    if (!state.wasUp && state.falls >= FALLS_AT_FIRST) {
      state.kept = false;
      first.reject(new Error(`${spec.name} does not start:\n${how.lastLines}`));
      return;
    }
    const pauseMs = pauseBeforeStartMs(state.falls);
    const detail = how.isShown || how.lastLines === "" ? "" : `\n${how.lastLines}`;
    context.tell(`${spec.name} ended (${how.text}); starting it again in ${pauseMs / 1000} s${detail}`);
    timer = setTimeout(begin, pauseMs);
  };
  begin();
  return {
    name: spec.name,
    port: spec.port,
    isUp: () => state.up,
    isKept: () => state.kept,
    firstUp: first.promise,
    restart: () => {
      state.restarting = state.process !== undefined;
      void endProcess(state.process);
    },
    stop: () => {
      state.kept = false;
      clearTimeout(timer);
      first.resolve();
      return endProcess(state.process);
    },
  };
}
