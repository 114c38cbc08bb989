import type { AlertKey, AlertMarkReply, MarkAsked, RefusalCode } from "@courtloom/protocol";
import { PROTOCOL_VERSION, UP } from "@courtloom/protocol/names";
import { alertKeyText } from "./alert-key-text.ts";
import type { Channel } from "./channel.ts";
import type { Timers } from "./mirror-timers.ts";

/** What somebody says of an alert; `id` names the alert and which of its marks it is. */
export interface KeptMark {
  readonly id: string;
  readonly key: AlertKey;
  readonly mark: MarkAsked;
}

/** Where marks outlive a reload until the server has them. */
export interface MarkStore {
  readonly all: () => readonly KeptMark[];
  /** Replaces what has its id. */
  readonly put: (mark: KeptMark) => void;
  readonly remove: (id: string) => void;
}

/**
 * `unsent`: not acknowledged, tried again; `taken`: acknowledged, the list that has it is on its way; `refused`: the
 * server will not have it, until somebody reads that.
 */
export interface PendingMark extends KeptMark {
  readonly status: "unsent" | "taken" | "refused";
  readonly refusal?: RefusalCode;
}

export interface MarkSender {
  /** In the order in which they were made. Keeps its identity while nothing changes. */
  readonly pending: () => readonly PendingMark[];
  readonly mark: (key: AlertKey, mark: MarkAsked) => void;
  /** A refused mark was read. */
  readonly dismiss: (id: string) => void;
  /** A list came: it has what was taken before. */
  readonly listed: () => void;
  readonly close: () => void;
}

export interface MarkSenderOptions {
  readonly channel: Channel;
  readonly timers: Timers;
  readonly kept: MarkStore;
  readonly changed: () => void;
  /** A mark was acknowledged. */
  readonly taken: () => void;
}

const RETRY_MS = 1_000;

/** Marks of one slot replace each other: what was said last counts. */
const slotOf = (mark: MarkAsked): string => (mark.kind === "wake" ? "snooze" : mark.kind);

export const memoryMarks = (): MarkStore => {
  const marks = new Map<string, KeptMark>();
  return {
    all: () => [...marks.values()],
    put: (mark) => void marks.set(mark.id, mark),
    remove: (id) => void marks.delete(id),
  };
};

/** Sends marks one at a time until each is acknowledged or refused for good. SPEC rules AS3, AS4. */
export const createMarkSender = (options: MarkSenderOptions): MarkSender => {
  const { channel, timers, kept } = options;
  let pending: readonly PendingMark[] = kept.all().map((mark) => ({ ...mark, status: "unsent" }));
  let isSending = false;
  let closed = false;
  let stopRetry: (() => void) | undefined;

  const become = (next: readonly PendingMark[]) => {
    pending = next;
    options.changed();
  };
  const replace = (mark: PendingMark, by: PendingMark) =>
    become(pending.map((each) => (each === mark ? by : each)));
  const retryLater = (afterMs: number) => {
    stopRetry?.();
    stopRetry = timers.after(afterMs, () => {
      stopRetry = undefined;
      void pump();
    });
  };
  /** False: not to be tried again at once. */
  const answered = (mark: PendingMark, reply: AlertMarkReply): boolean => {
    // Another word of the same slot was said meanwhile: that one is still to be sent.
    const isLast = pending.includes(mark);
    if (reply.ok) {
      if (!isLast) return true;
      kept.remove(mark.id);
      replace(mark, { ...mark, status: "taken" });
      options.taken();
      return true;
    }
    if (reply.retry) {
      retryLater(reply.afterMs ?? RETRY_MS);
      return false;
    }
    if (isLast) replace(mark, { ...mark, status: "refused", refusal: reply.code });
    return true;
  };
  async function pump(): Promise<void> {
    if (isSending || closed || stopRetry !== undefined) return;
    isSending = true;
    let goesOn = true;
    while (goesOn && !closed && channel.state() === "open") {
      const mark = pending.find(({ status }) => status === "unsent");
      if (mark === undefined) break;
      const message = { v: PROTOCOL_VERSION, key: mark.key, mark: mark.mark };
      const reply = await channel.request<AlertMarkReply>(UP.alertMark, message);
      if (!closed) goesOn = answered(mark, reply);
    }
    isSending = false;
  }
  const stopState = channel.onState((state) => {
    if (state !== "open") return;
    stopRetry?.();
    stopRetry = undefined;
    void pump();
  });
  void pump();

  return {
    pending: () => pending,
    mark: (key, mark) => {
      const made: KeptMark = { id: `${alertKeyText(key)}/${slotOf(mark)}`, key, mark };
      kept.put(made);
      become([...pending.filter(({ id }) => id !== made.id), { ...made, status: "unsent" }]);
      void pump();
    },
    dismiss: (id) => {
      kept.remove(id);
      become(pending.filter((mark) => mark.id !== id));
    },
    listed: () => {
      if (pending.some(({ status }) => status === "taken"))
        become(pending.filter(({ status }) => status !== "taken"));
    },
    close: () => {
      closed = true;
      stopState();
      stopRetry?.();
    },
  };
};
