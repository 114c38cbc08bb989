import type { Clock, Principal, Result } from "@courtloom/core";
import type { ApiAuth, CookieHeader } from "./api-auth.ts";
import type { ApiLog, ApiStore } from "./api-store.ts";
import type { HistoryCache } from "./figures/history-cache.ts";

/** How far the loading of the demonstration academy is. `done` is a share in [0, 1]. */
export type DemoState =
  | { readonly kind: "idle" }
  | { readonly kind: "loading"; readonly done: number; readonly what: string }
  | { readonly kind: "ready" }
  | { readonly kind: "failed" };

/** Loads the demonstration academy beside the requests that ask for it. */
export interface DemoLoader {
  /** Begins, unless it is under way. */
  readonly start: () => void;
  readonly state: () => DemoState;
}

/** What one request is answered with. The application wires it; nothing here knows a database. */
export interface ApiContext {
  /** Who is asking; looked up when a procedure needs it. Throws when the database is away. */
  readonly principal: () => Promise<Result<Principal, "signed_out" | "code_expired">>;
  readonly store: ApiStore;
  readonly log: ApiLog;
  /** Matches folded for figures over many; one for the whole process. */
  readonly history: HistoryCache;
  readonly auth: ApiAuth;
  readonly demo: DemoLoader;
  readonly clock: Clock;
  readonly cookieHeader: string | undefined;
  /** Network address that the front door wrote; empty when it is not known. */
  readonly address: string;
  readonly setCookie: (cookie: CookieHeader) => void;
  /** Whether an error means that a database is away, so that the same call may succeed later. */
  readonly isUnavailable: (error: unknown) => boolean;
}
