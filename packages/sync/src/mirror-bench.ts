import type { Refusal } from "@courtloom/protocol";
import type { Channel, ChannelState } from "./channel.ts";
import type { MirrorDeps } from "./mirror-court.ts";

/** For tests of the mirrors: a connection and a clock that are worked by hand. */
export interface Bench {
  readonly channel: Channel;
  readonly deps: MirrorDeps;
  /** Questions asked so far, in order. */
  readonly asked: { readonly event: string; readonly message: unknown }[];
  /** Something comes from the server. */
  readonly push: (event: string, message: unknown) => void;
  readonly become: (state: ChannelState) => void;
  /** Lets time pass, a second at a time, with everything that falls due. */
  readonly pass: (ms: number) => Promise<void>;
  /** Lets every promise that can go on go on. */
  readonly settle: () => Promise<void>;
}

interface Due {
  readonly atMs: number;
  readonly act: () => void;
}

const UNAVAILABLE: Refusal = { ok: false, code: "unavailable", retry: true };

/** `answer` is the server: what it says to a question, at once. Not asked while the connection is lost. */
export const createBench = (answer: (event: string, message: never) => unknown): Bench => {
  const handlers = new Map<string, Set<(message: unknown) => void>>();
  const stateHandlers = new Set<(state: ChannelState) => void>();
  const due = new Set<Due>();
  const asked: { event: string; message: unknown }[] = [];
  let state: ChannelState = "open";
  let nowMs = 1_000;

  const settle = async () => {
    for (let i = 0; i < 50; i += 1) await Promise.resolve();
  };
  const channel: Channel = {
    request: async <Reply>(event: string, message: unknown) => {
      if (state !== "open") return UNAVAILABLE;
      asked.push({ event, message });
      return (await answer(event, message as never)) as Reply;
    },
    on: (event, handler) => {
      const set = handlers.get(event) ?? new Set();
      handlers.set(event, set.add(handler));
      return () => set.delete(handler);
    },
    state: () => state,
    onState: (handler) => {
      stateHandlers.add(handler);
      return () => stateHandlers.delete(handler);
    },
    close: () => {},
  };
  return {
    channel,
    asked,
    settle,
    deps: {
      clock: { wallMs: () => nowMs, monotonicMs: () => nowMs },
      timers: {
        after: (ms, act) => {
          const entry = { atMs: nowMs + ms, act };
          due.add(entry);
          return () => due.delete(entry);
        },
      },
    },
    push: (event, message) => {
      for (const handler of handlers.get(event) ?? []) handler(message);
    },
    become: (next) => {
      state = next;
      for (const handler of stateHandlers) handler(next);
    },
    pass: async (ms) => {
      for (let left = ms; left > 0; left -= 1_000) {
        nowMs += Math.min(left, 1_000);
        for (const entry of [...due].filter((d) => d.atMs <= nowMs)) {
          due.delete(entry);
          entry.act();
          await settle();
        }
      }
    },
  };
};
