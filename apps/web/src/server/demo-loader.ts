import "server-only";
import { setTimeout as pause } from "node:timers/promises";
import { type DemoLoader, type DemoState, demoToday, loadDemo } from "@courtloom/api";
import { log } from "./log.ts";
import { once } from "./once.ts";
import { services } from "./services.ts";

/** Tells whoever started this process, if it listens, so that the demonstration's courts begin to be played. */
const tellSupervisor = (): void => {
  process.send?.({ kind: "demo-loaded" });
};

/** The answer to whoever asked leaves first: making the seasons keeps this process busy for seconds. */
const ANSWER_FIRST_MS = 100;

const createLoader = (): DemoLoader => {
  let state: DemoState = { kind: "idle" };
  const load = async (): Promise<void> => {
    const { auth, days, clock } = services();
    await loadDemo({
      store: days,
      createAccount: auth.createAccount,
      date: demoToday(clock.wallMs()),
      onProgress: (done, what) => {
        state = { kind: "loading", done, what };
      },
    });
  };
  const run = async (): Promise<void> => {
    try {
      await pause(ANSWER_FIRST_MS);
      await load();
      state = { kind: "ready" };
      tellSupervisor();
    } catch (error) {
      log.error({ err: error }, "the demo academy could not be loaded");
      state = { kind: "failed" };
    }
  };
  return {
    state: () => state,
    start: () => {
      if (state.kind === "loading") return;
      state = { kind: "loading", done: 0, what: "Making the academy" };
      void run();
    },
  };
};

/** One loading at a time in this process. */
export const demoLoader = (): DemoLoader => once("demo-loader", createLoader);
