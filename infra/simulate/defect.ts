import type { EntryStore } from "@courtloom/db";
import type { Channel, Outbox } from "@courtloom/sync";
import type { AlertStore, LogStore, Peer } from "./live-core.ts";

/** What a defect may use of the schedule that it is built into. */
export interface Lab {
  readonly pause: (ms: number) => Promise<void>;
  readonly isUp: () => boolean;
}

/** One node's dependencies, wrapped; made anew with every start of the node, so what it keeps is gone with it. */
export interface NodeParts {
  readonly store?: (store: LogStore) => LogStore;
  readonly alerts?: (alerts: AlertStore) => AlertStore;
  readonly peer?: (peer: Peer) => Peer;
}

/** A fault of design, built in by wrapping what a part depends on; the product's own code is not changed. */
export interface Defect {
  readonly name: string;
  readonly says: string;
  /** The rules of the log on disk, replaced. */
  readonly database?: (store: EntryStore, lab: Lab) => EntryStore;
  /** A restored log keeps the id that it had. */
  readonly keepsIncarnation?: true;
  /** What was committed less than so many ms before the database went down is gone. */
  readonly forgetsMs?: number;
  readonly node?: (lab: Lab) => NodeParts;
  readonly outbox?: (outbox: Outbox, lab: Lab) => Outbox;
  readonly phoneChannel?: (channel: Channel) => Channel;
  readonly viewerChannel?: (channel: Channel) => Channel;
}
