import type { Clock } from "@courtloom/core";
import type { Refusal, RefusalCode } from "@courtloom/protocol";
import type { Channel } from "./channel.ts";
import type { Timers } from "./mirror-timers.ts";

/**
 * What a mirror may be believed for. `loading`: nothing was read yet. `live`: subscribed on this
 * connection and the server was heard lately. `stale`: what is shown is the past. `refused`: the server
 * will not show it. SPEC rules MR1 to MR4.
 */
export type MirrorState = "loading" | "live" | "stale" | "refused";

/** After this silence the server is asked again; a good answer counts as heard. */
export const ASK_AFTER_MS = 5_000;
/** After this silence what is shown counts as the past. */
export const SERVER_SILENT_MS = 10_000;
const TICK_MS = 1_000;
const RETRY_MS = 1_000;

export interface LinkFacts {
  readonly everRead: boolean;
  /** A read succeeded on the present connection. */
  readonly subscribed: boolean;
  readonly open: boolean;
  /** Since the server was last heard; Infinity when never. */
  readonly silentMs: number;
  readonly refusal: RefusalCode | null;
}

/** The state that the facts of a connection amount to. Pure. */
export const mirrorStateOf = (facts: LinkFacts): MirrorState => {
  if (facts.refusal !== null) return "refused";
  if (!facts.everRead) return "loading";
  return facts.subscribed && facts.open && facts.silentMs < SERVER_SILENT_MS ? "live" : "stale";
};

/** `more`: read again at once. `wait`: nothing new though there should be; read again a little later. */
export type ReadOutcome = "read" | "more" | "wait" | Refusal;

export interface LinkOptions {
  readonly channel: Channel;
  readonly clock: Clock;
  readonly timers: Timers;
  /** One question to the server. `fresh`: the first on this connection, so it must subscribe. */
  readonly read: (fresh: boolean) => Promise<ReadOutcome>;
  /** Called when the state, the refusal or reachability changed. */
  readonly changed: () => void;
}

export interface Link {
  readonly state: () => MirrorState;
  readonly refusal: () => RefusalCode | null;
  /** False while there is no connection to the server. */
  readonly reachable: () => boolean;
  /** Device wall clock when the server was last heard; null when never. */
  readonly lastHeardMs: () => number | null;
  /** Begins; called once, when the mirror is ready to be told. */
  readonly start: () => void;
  /** Something came from the server. */
  readonly heard: () => void;
  /** Read again: a gap was seen. */
  readonly ask: () => void;
  readonly close: () => void;
}

/**
 * Keeps a mirror subscribed: reads one question at a time, again after every reconnect, after a
 * refusal that may be retried, and when the server has been silent. Never rejects, never gives up.
 */
export const createLink = (options: LinkOptions): Link => {
  const { channel, clock, timers } = options;
  const heardAt = { wallMs: 0, monotonicMs: 0, ever: false };
  const facts = { everRead: false, subscribed: false, refusal: null as RefusalCode | null };
  let generation = 0;
  let reading = false;
  let again = false;
  let closed = false;
  let stopRetry: (() => void) | undefined;
  let shown = "";

  // A sleeping device may stop one clock and a corrected one may jump: the longer silence counts.
  const silentMs = () =>
    heardAt.ever
      ? Math.max(clock.monotonicMs() - heardAt.monotonicMs, clock.wallMs() - heardAt.wallMs)
      : Number.POSITIVE_INFINITY;
  const reachable = () => channel.state() === "open";
  const state = () => mirrorStateOf({ ...facts, open: reachable(), silentMs: silentMs() });
  const tell = () => {
    const now = `${state()} ${facts.refusal} ${channel.state()}`;
    if (now === shown || closed) return;
    shown = now;
    options.changed();
  };
  const heard = () => {
    heardAt.wallMs = clock.wallMs();
    heardAt.monotonicMs = clock.monotonicMs();
    heardAt.ever = true;
    tell();
  };
  const dropRetry = () => {
    stopRetry?.();
    stopRetry = undefined;
  };
  const retryLater = (afterMs: number) => {
    dropRetry();
    stopRetry = timers.after(afterMs, () => {
      stopRetry = undefined;
      ask();
    });
  };
  const take = (outcome: ReadOutcome) => {
    if (typeof outcome === "object") {
      facts.subscribed = false;
      facts.refusal = outcome.retry ? null : outcome.code;
      if (outcome.retry) retryLater(outcome.afterMs ?? RETRY_MS);
      return tell();
    }
    facts.everRead = true;
    facts.subscribed = true;
    facts.refusal = null;
    if (outcome === "more") again = true;
    if (outcome === "wait") retryLater(RETRY_MS);
    heard();
  };
  const run = async () => {
    reading = true;
    do {
      again = false;
      const asked = generation;
      const outcome = await options.read(!facts.subscribed);
      if (closed) return;
      if (asked === generation) take(outcome);
      else again = true;
    } while (again && reachable());
    reading = false;
  };
  function ask() {
    if (closed || !reachable()) return;
    if (reading) again = true;
    else void run();
  }
  const connected = (now: ReturnType<Channel["state"]>) => {
    generation += 1;
    facts.subscribed = false;
    dropRetry();
    if (now === "open") ask();
    tell();
  };
  const tick = () => {
    if (closed) return;
    // A refusal says when to come back: until then silence is no reason to ask.
    const mayAsk = facts.refusal === null && stopRetry === undefined && !reading;
    if (mayAsk && silentMs() >= ASK_AFTER_MS) ask();
    tell();
    stopTick = timers.after(TICK_MS, tick);
  };
  let stopState = () => {};
  let stopTick = () => {};

  return {
    start: () => {
      stopState = channel.onState(connected);
      stopTick = timers.after(TICK_MS, tick);
      ask();
    },
    state,
    refusal: () => facts.refusal,
    reachable,
    lastHeardMs: () => (heardAt.ever ? heardAt.wallMs : null),
    heard,
    ask,
    close: () => {
      closed = true;
      stopState();
      stopTick();
      dropRetry();
    },
  };
};
