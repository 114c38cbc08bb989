import { ok } from "@courtloom/core";
import type { LoggedEntry } from "@courtloom/match-log";
import {
  type CourtEntries,
  type CourtWatchReply,
  DOWN,
  type LaneAppend,
  type LaneAppendReply,
  type LaneOpenReply,
  UP,
} from "@courtloom/protocol";
import type { Channel } from "@courtloom/sync";
import type { Defect } from "../defect.ts";

/** A channel whose answers to one message are changed on their way; `send` may change the message too. */
const answering = <M, R>(
  channel: Channel,
  event: string,
  change: (message: M, ask: (message: M) => Promise<R>) => Promise<R>,
): Channel => ({
  ...channel,
  request: async (name, message) =>
    name === event
      ? ((await change(message as M, (asked) => channel.request(name, asked) as Promise<R>)) as never)
      : channel.request(name, message),
});

const appendAnswered = (upTo: number): LaneAppendReply => ({
  ok: true,
  kind: "appended",
  upTo,
  head: 0,
  rejected: [],
});

const prunesOnRefusal: Defect = {
  name: "outbox prunes on a refusal",
  says: "entries that were refused are not sent again",
  phoneChannel: (channel) =>
    answering<LaneAppend, LaneAppendReply>(channel, UP.laneAppend, async (message, ask) => {
      const reply = await ask(message);
      return reply.ok ? reply : appendAnswered(message.entries.at(-1)?.n ?? 0);
    }),
};

const ackBeyondBatch: Defect = {
  name: "acknowledged beyond the batch",
  says: "the cursor rises over the entry after the last that was sent",
  phoneChannel: (channel) =>
    answering<LaneAppend, LaneAppendReply>(channel, UP.laneAppend, async (message, ask) => {
      const [last, sent] = [message.entries.at(-1), message.entries.slice(0, -1)];
      if (last === undefined || sent.length === 0) return ask(message);
      const reply = await ask({ ...message, entries: sent });
      return reply.ok ? appendAnswered(last.n) : reply;
    }),
};

const noRewind: Defect = {
  name: "no rewind",
  says: "what was acknowledged once is never sent again",
  phoneChannel: (channel) =>
    answering<LaneAppend, LaneAppendReply>(
      answering<unknown, LaneOpenReply>(channel, UP.laneOpen, async (message, ask) => {
        const reply = await ask(message);
        return reply.ok ? { ...reply, cursor: Number.MAX_SAFE_INTEGER } : reply;
      }),
      UP.laneAppend,
      async (message, ask) => {
        const reply = await ask(message);
        return !reply.ok && reply.code === "gap" ? { ok: false, code: "unavailable", retry: true } : reply;
      },
    ),
};

const confirmsFirst: Defect = {
  name: "confirmed before stored",
  says: "the screen confirms 250 ms before the phone has stored the entry",
  outbox: (outbox, { pause }) => ({
    ...outbox,
    add: async (laneId, entry) => {
      void pause(250).then(() => outbox.add(laneId, entry));
      return ok(undefined);
    },
  }),
};

/** Gives pushed entries the places that a reader without a check would put them to. */
const unchecked = (channel: Channel, takes: (pos: number, last: number) => boolean): Channel => {
  let held = 0;
  const watched: Channel = {
    ...channel,
    request: async <Reply>(event: string, message: unknown) => {
      const reply = await channel.request<Reply>(event, message);
      const page = reply as CourtWatchReply;
      if ((event === UP.courtWatch || event === UP.courtRead) && page.ok)
        held = Math.max(held, page.entries.at(-1)?.pos ?? 0);
      return reply;
    },
    on: (event, handler) => {
      if (event !== DOWN.courtEntries) return channel.on(event, handler);
      return channel.on(event, (raw) => {
        const message = raw as CourtEntries;
        const entries: LoggedEntry[] = [];
        for (const entry of message.entries) {
          if (!takes(entry.pos, held)) continue;
          held += 1;
          entries.push(entry.pos === held ? entry : { ...entry, pos: held });
        }
        handler({ ...message, entries });
      });
    },
  };
  return watched;
};

const noGapCheck: Defect = {
  name: "mirror without a gap check",
  says: "a viewer puts what comes after a gap right behind what it has",
  viewerChannel: (channel) => unchecked(channel, (pos, last) => pos > last),
};

const takesTwice: Defect = {
  name: "viewer takes duplicates",
  says: "a viewer adds what it has already",
  viewerChannel: (channel) => unchecked(channel, (pos, last) => pos <= last + 1),
};

/** What a phone or a viewer does wrong. */
export const ON_THE_DEVICE: readonly Defect[] = [
  prunesOnRefusal,
  ackBeyondBatch,
  noRewind,
  confirmsFirst,
  noGapCheck,
  takesTwice,
];
