import type { Principal } from "@courtloom/core";
import type { Refusal } from "@courtloom/protocol";
import type { AlertDesk } from "../alerts/alert-desk.ts";
import type { Directory } from "../rooms/directory.ts";
import type { HeardBook } from "../rooms/heard-book.ts";
import type { Runtime } from "../runtime.ts";
import type { MatchCard } from "../store.ts";
import type { Viewer } from "../viewer.ts";

/** What a socket follows; each ends by its own key, and all with the socket. */
export interface Subscriptions {
  /** False when the socket follows too much already, or has gone. */
  readonly add: (key: string, end: () => void) => boolean;
  readonly has: (key: string) => boolean;
  readonly end: (key: string) => void;
}

/** What a message is handled with. */
export interface MessageContext {
  readonly principal: Principal;
  readonly viewer: Viewer;
  readonly subscriptions: Subscriptions;
  readonly directory: Directory;
  readonly alerts: AlertDesk;
  readonly heard: HeardBook;
  readonly runtime: Runtime;
  /** A match of the principal's academy, looked up at most two seconds ago. */
  readonly matchCard: (matchId: string) => Promise<MatchCard | undefined>;
}

/** What came over the wire has this shape or is refused. */
export interface Shape<M> {
  readonly safeParse: (
    raw: unknown,
  ) => { readonly success: true; readonly data: M } | { readonly success: false };
}

/** One kind of message: its shape, and what is done with a well-shaped one. May reject: `unavailable`. */
export interface MessageKind<M> {
  readonly shape: Shape<M>;
  readonly handle: (message: M, context: MessageContext) => Promise<{ readonly ok: boolean } | Refusal>;
}
