import type { Clock } from "@courtloom/core";

/** Calls back once after `ms`; the returned function takes it back. */
export interface Timers {
  readonly after: (ms: number, run: () => void) => () => void;
}

/** What may be written to the log about a fault: ids and positions, never a name, a token or a message's content. */
export interface FaultFacts {
  readonly matchId?: string;
  readonly dayId?: string;
  readonly pos?: number;
  readonly event?: string;
  readonly error?: unknown;
}

/** `fault` when somebody must act, `note` otherwise. */
export interface Log {
  readonly fault: (what: string, facts: FaultFacts) => void;
  readonly note: (what: string, facts: FaultFacts) => void;
}

/** Everything outside that the rooms touch, so that a test or a simulator can drive them. */
export interface Runtime {
  readonly clock: Clock;
  readonly timers: Timers;
  readonly log: Log;
  /** Whether an error means that the database is away, which passes, rather than a bug. */
  readonly isOutage: (error: unknown) => boolean;
}

/** Writes an error down: a fault, unless it is only that the database is away. */
export const logError = ({ log, isOutage }: Runtime, what: string, facts: FaultFacts): void =>
  isOutage(facts.error) ? log.note(what, facts) : log.fault(what, facts);
