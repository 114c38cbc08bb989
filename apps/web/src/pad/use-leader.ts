import type { Leader } from "@courtloom/protocol";
import { useEffect, useState } from "react";

const SECOND_MS = 1_000;

/** Who leads instead, for the screen. */
export interface LeaderShown {
  readonly by: string;
  /** Whole seconds since their phone was heard, by the server's clock; undefined: never heard. */
  readonly silentSeconds: number | undefined;
  /** The server said that this person may take over now. */
  readonly mayTakeOver: boolean;
  /** This phone handed the lead to them. */
  readonly handedOver?: boolean;
}

/** What the server said last of the leading phone, with the seconds running on until it says more. */
export const useLeader = (leader: Leader | undefined): LeaderShown | undefined => {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    if (!leader) return;
    const since = performance.now();
    const tell = () => setSeconds(Math.floor((performance.now() - since) / SECOND_MS));
    tell();
    const timer = setInterval(tell, SECOND_MS);
    return () => clearInterval(timer);
  }, [leader]);
  if (!leader) return undefined;
  const { by, heardMs, serverMs, takeOverInMs, handedOver } = leader;
  const silent = heardMs === null ? undefined : Math.floor(Math.max(0, serverMs - heardMs) / SECOND_MS);
  return {
    by,
    silentSeconds: silent === undefined ? undefined : silent + seconds,
    mayTakeOver: takeOverInMs === 0,
    ...(handedOver ? { handedOver } : {}),
  };
};
