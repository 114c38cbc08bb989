import type { Outbox } from "@courtloom/sync";
import { useEffect, useState } from "react";
import type { Courtside, CourtsideMatch } from "./courtside.ts";
import { type OtherLanes, openPadSession, type PadSession } from "./pad-session.ts";
import type { PadLevel } from "./pad-settings.ts";

/** Opens a session while a match is charted and closes it when another one, or none, is. */
export const usePadSession = (
  courtside: Courtside,
  match: CourtsideMatch,
  level: PadLevel,
  outbox: Outbox,
  /** Which other lanes it sends as well; constant while it is open. Default: all. */
  others: OtherLanes = {},
): PadSession | undefined => {
  const [session, setSession] = useState<PadSession>();
  const [openedAt] = useState(level);
  const [sends] = useState(others);
  useEffect(() => {
    let wanted = true;
    let opened: PadSession | undefined;
    const open = async () => {
      const made = await openPadSession({ courtside, match, level: openedAt, outbox, others: sends });
      if (!wanted) return made.close();
      opened = made;
      setSession(made);
    };
    void open();
    return () => {
      wanted = false;
      opened?.close();
      setSession(undefined);
    };
  }, [courtside, match, openedAt, outbox, sends]);
  return session;
};
