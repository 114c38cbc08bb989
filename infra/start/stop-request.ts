import type { Say } from "./say.ts";

export interface StopRequest {
  /** Resolves with the exit code: 0 when a person or the system asked, 1 when something broke. */
  readonly requested: Promise<number>;
  readonly isRequested: () => boolean;
  readonly fail: (sentence: string) => void;
}

const SIGNALS = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/** Listens for Ctrl-C, the system's signals and bugs. A second Ctrl-C ends this process at once. */
export function listenForStop(tell: Say): StopRequest {
  const { promise, resolve } = Promise.withResolvers<number>();
  let requested = false;
  const request = (exitCode: number): void => {
    requested = true;
    resolve(exitCode);
  };
  const fail = (sentence: string): void => {
    tell(`\n${sentence}\n`);
    request(1);
  };
  for (const signal of SIGNALS) {
    process.on(signal, () => {
      if (!requested) return request(0);
      if (signal !== "SIGINT") return;
      tell("Ending at once. The next start takes over what is left running.");
      process.exit(1);
    });
  }
  process.on("uncaughtException", (error) =>
    fail(`Courtloom stops because of a fault of its own:\n${error.stack}`),
  );
  // A terminal that was closed, or a pipe whose reader ended, is no reason to stop.
  process.stdout.on("error", () => undefined);
  return { requested: promise, isRequested: () => requested, fail };
}
