import type { Principal } from "@courtloom/core";
import {
  OLDEST_PROTOCOL_VERSION,
  PROTOCOL_VERSION,
  type Refusal,
  type RefusalCode,
} from "@courtloom/protocol";
import type { LookUps, Speaks } from "./look-ups.ts";
import { createBudget } from "./message-budget.ts";
import type { MessageContext } from "./messages/message-context.ts";
import { type ReadyMessage, readerOf } from "./messages/message-kinds.ts";
import { refuse } from "./refuse.ts";
import { logError } from "./runtime.ts";
import { createSubscriptions } from "./subscriptions.ts";
import type { Viewer } from "./viewer.ts";

/** One connection, as the transport gives it. */
export interface Peer {
  readonly cookieHeader: string | undefined;
  /** What the handshake asked for; a device with one session speaks with that one either way. */
  readonly speaks: Speaks;
  readonly viewer: Viewer;
  /** Ends the connection; the other side may come back and is then asked anew who it is. */
  readonly end: () => void;
}

export interface SessionDeps extends Pick<MessageContext, "directory" | "alerts" | "heard" | "runtime"> {
  readonly lookUps: LookUps;
}

/** One connection's side of the gateway. Nothing here rejects or throws. */
export interface Session {
  /** Answers one message. `payload` is whatever came. */
  readonly receive: (event: string, payload: unknown) => Promise<{ readonly ok: boolean } | Refusal>;
  /** Ends the connection if who is behind it has changed while it follows something. Call it every two seconds. */
  readonly recheck: () => Promise<void>;
  readonly close: () => void;
}

const versionRefusal = (payload: unknown): RefusalCode | undefined => {
  if (typeof payload !== "object" || payload === null || !Object.hasOwn(payload, "v")) return "bad_shape";
  const { v } = payload as { readonly v: unknown };
  if (typeof v !== "number" || !Number.isSafeInteger(v)) return "bad_shape";
  if (v > PROTOCOL_VERSION) return "new_version";
  return v < OLDEST_PROTOCOL_VERSION ? "old_version" : undefined;
};

/** Name, version, shape: what can be said of a message before anybody is asked who sent it. SPEC PR1. */
const readMessage = (event: string, payload: unknown): ReadyMessage | RefusalCode => {
  const reader = readerOf(event);
  if (!reader) return "bad_shape";
  return versionRefusal(payload) ?? reader(payload) ?? "bad_shape";
};

export const createSession = (peer: Peer, deps: SessionDeps): Session => {
  const { lookUps, runtime, directory, alerts, heard } = deps;
  const budget = createBudget(runtime.clock);
  const subscriptions = createSubscriptions();
  const whoSpeaks = () => lookUps.principalOf(peer.cookieHeader, peer.speaks);
  /** Whom the subscriptions were given to. */
  let known: string | undefined;

  const contextFor = (principal: Principal): MessageContext => ({
    principal,
    viewer: peer.viewer,
    subscriptions,
    directory,
    alerts,
    heard,
    runtime,
    matchCard: (matchId) => lookUps.matchCard({ academyId: principal.academyId, matchId }),
  });
  /** Subscriptions never outlive the person they were given to. */
  const recognise = (principal: Principal): void => {
    const now = JSON.stringify(principal);
    if (known !== undefined && known !== now) subscriptions.clear();
    known = now;
  };
  const answer = async (event: string, payload: unknown): Promise<{ readonly ok: boolean } | Refusal> => {
    const message = readMessage(event, payload);
    if (typeof message === "string") return refuse(message);
    const found = await whoSpeaks();
    if (!found.ok) {
      subscriptions.clear();
      return refuse(found.error);
    }
    recognise(found.value);
    return message(contextFor(found.value));
  };
  const endIfChanged = async (): Promise<void> => {
    const found = await whoSpeaks();
    if (found.ok && JSON.stringify(found.value) === known) return;
    subscriptions.clear();
    peer.end();
  };

  return {
    receive: async (event, payload) => {
      const waitMs = budget.take();
      if (waitMs > 0) return refuse("busy", waitMs);
      try {
        return await answer(event, payload);
      } catch (error) {
        logError(runtime, "a message could not be handled", {
          event: readerOf(event) ? event : "unknown",
          error,
        });
        return refuse("unavailable");
      }
    },
    recheck: async () => {
      if (subscriptions.count() === 0) return;
      try {
        await endIfChanged();
      } catch (error) {
        // Nobody can be asked just now; asked again in two seconds, and nothing new is committed meanwhile.
        logError(runtime, "a session could not be looked up", { error });
      }
    },
    close: subscriptions.close,
  };
};
