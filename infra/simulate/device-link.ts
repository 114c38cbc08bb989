import { type LaneAppend, type Refusal, UP } from "@courtloom/protocol";
import type { Channel, ChannelState } from "@courtloom/sync";
import { createPipe, type LinkFaults, type Pipe, soundLink } from "./link.ts";
import { createOutlet, type Person, type Session } from "./live-core.ts";
import type { ServerNode } from "./server-node.ts";
import type { Stream } from "./stream.ts";
import type { Trace } from "./trace.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** One device's way to the server: a channel that reconnects by itself, over a link that the plan disturbs. */
export interface DeviceLink {
  readonly faults: LinkFaults;
  /** Ends the present connection; both ends notice a little later. */
  readonly cut: () => void;
  /** A new page's channel; the page before it is gone. */
  readonly open: () => Channel;
  /** The page is gone. */
  readonly close: () => void;
  /** The device takes what was held back for it. */
  readonly catchUp: () => void;
}

export interface DeviceLinkOptions {
  readonly name: string;
  readonly person: Person;
  readonly time: VirtualTime;
  readonly stream: Stream;
  readonly trace: Trace;
  readonly nodes: readonly ServerNode[];
}

interface Connection {
  readonly session: Session;
  readonly node: ServerNode;
  readonly life: number;
  readonly up: Pipe;
  readonly down: Pipe;
  readonly flush: () => void;
  isOpen: boolean;
}

const ANSWER_WITHIN_MS = 8_000;
const CONNECT_WITHIN_MS = 5_000;
const UNAVAILABLE: Refusal = { ok: false, code: "unavailable", retry: true };

/** A batch of which only the first entries arrive; any other message as it is. */
const cutShort = (event: string, message: unknown, stream: Stream): unknown => {
  if (event !== UP.laneAppend) return message;
  const batch = message as LaneAppend;
  return { ...batch, entries: batch.entries.slice(0, stream.int(1, batch.entries.length)) };
};

export const createDeviceLink = (options: DeviceLinkOptions): DeviceLink => {
  const { name, person, time, stream, trace, nodes } = options;
  const faults = soundLink();
  let page = 0;
  let state: ChannelState = "connecting";
  let connection: Connection | undefined;
  let failures = 0;
  let stopAttempt = (): void => undefined;
  let handlers = new Map<string, Set<(message: unknown) => void>>();
  let stateHandlers = new Set<(state: ChannelState) => void>();
  let waiting = new Map<number, (reply: unknown) => void>();
  let requests = 0;

  const become = (next: ChannelState): void => {
    if (next === state) return;
    state = next;
    trace.say(name, next);
    for (const handler of [...stateHandlers]) handler(next);
  };
  const unanswered = (): void => {
    for (const answer of [...waiting.values()]) answer(UNAVAILABLE);
  };
  /** What the device sees when its connection is gone. */
  const lost = (gone: Connection, again: boolean): void => {
    if (connection !== gone) return;
    connection = undefined;
    become("lost");
    unanswered();
    if (again) attemptLater(stream.int(250, 750));
  };
  const endAt = (gone: Connection): void => {
    if (!gone.isOpen) return;
    gone.isOpen = false;
    gone.session.close();
  };
  const attemptLater = (ms: number): void => {
    stopAttempt();
    stopAttempt = time.after(ms, attempt);
  };
  const failed = (): void => {
    failures += 1;
    become("lost");
    attemptLater(Math.min(5_000, 500 * 2 ** failures) * (0.5 + stream.float()));
  };
  const attempt = (): void => {
    const mine = page;
    const up = nodes.filter((node) => node.live() !== undefined);
    const node = up.length === 0 ? undefined : stream.pick(up);
    if (faults.swallows) {
      stopAttempt = time.after(CONNECT_WITHIN_MS, failed);
      return;
    }
    stopAttempt = time.after(stream.int(10, 80), () => {
      if (mine !== page) return;
      const opened = faults.isCut || node === undefined ? undefined : connect(node);
      if (opened === undefined) return failed();
      failures = 0;
      connection = opened;
      become("open");
    });
  };
  const connect = (node: ServerNode): Connection | undefined => {
    const up = createPipe(time, stream, faults);
    const down = createPipe(time, stream, faults);
    const own: { it: Connection | undefined } = { it: undefined };
    const outlet = createOutlet({
      emit: (event, message) =>
        down.send(() => {
          if (connection !== own.it) return;
          for (const handler of [...(handlers.get(event) ?? [])]) handler(message);
        }),
      isBehind: () => faults.isSlow,
    });
    const session = node.connect({
      cookieHeader: person,
      speaks: "account",
      viewer: outlet,
      end: () => {
        const gone = own.it;
        if (gone === undefined) return;
        endAt(gone);
        time.after(stream.int(4, 60), () => lost(gone, true));
      },
    });
    if (session === undefined) return undefined;
    own.it = { session, node, life: node.life(), up, down, flush: outlet.flush, isOpen: true };
    return own.it;
  };
  const receive = async (
    on: Connection,
    event: string,
    message: unknown,
    reply: (answer: unknown) => void,
  ) => {
    const alive = (): boolean => on.isOpen && on.node.live() !== undefined && on.node.life() === on.life;
    if (!alive()) return;
    const answer = await on.session.receive(event, message);
    if (!answer.ok) trace.say(name, `${event} is refused by ${on.node.name}: ${JSON.stringify(answer)}`);
    if (alive()) on.down.send(() => connection === on && reply(answer), true);
  };
  const request = <Reply>(event: string, message: unknown): Promise<Reply | Refusal> => {
    const on = connection;
    if (on === undefined || state !== "open") return Promise.resolve(UNAVAILABLE);
    requests += 1;
    const id = requests;
    return new Promise((resolve) => {
      const settle = (answer: unknown): void => {
        if (!waiting.delete(id)) return;
        stopWaiting();
        resolve(answer as Reply | Refusal);
      };
      const stopWaiting = time.after(ANSWER_WITHIN_MS, () => settle(UNAVAILABLE));
      waiting.set(id, settle);
      const sent = faults.truncates ? cutShort(event, message, stream) : message;
      on.up.send(() => void receive(on, event, sent, settle));
    });
  };
  const drop = (again: boolean): void => {
    const gone = connection;
    if (gone === undefined) return;
    time.after(stream.int(4, 60), () => endAt(gone));
    time.after(stream.int(4, 60), () => lost(gone, again));
  };
  for (const node of nodes) {
    node.onCrash(() => {
      if (connection?.node === node) drop(true);
    });
  }
  const close = (): void => {
    page += 1;
    stopAttempt();
    const gone = connection;
    connection = undefined;
    if (gone) time.after(stream.int(4, 60), () => endAt(gone));
    handlers = new Map();
    stateHandlers = new Set();
    waiting = new Map();
    state = "connecting";
  };
  return {
    faults,
    cut: () => drop(true),
    close,
    catchUp: () => connection?.flush(),
    open: () => {
      close();
      failures = 0;
      attemptLater(stream.int(1, 50));
      const mine = page;
      const isMine = (): boolean => mine === page;
      return {
        request: (event, message) => (isMine() ? request(event, message) : new Promise(() => undefined)),
        on: (event, handler) => {
          const held = handlers.get(event) ?? new Set();
          handlers.set(event, held.add(handler));
          return () => held.delete(handler);
        },
        state: () => state,
        onState: (handler) => {
          stateHandlers.add(handler);
          return () => stateHandlers.delete(handler);
        },
        close: () => isMine() && close(),
      };
    },
  };
};
