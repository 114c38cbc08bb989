import type { Outbox } from "@courtloom/sync";
import { useCallback, useEffect, useRef, useState } from "react";
import { readCourtside } from "./ask-courtside.ts";
import type { Courtside, CourtsideMatch, CourtsideRefused } from "./courtside.ts";
import { courtsideOnPhone } from "./courtside-on-phone.ts";
import { takeLinkedCode } from "./linked-code.ts";
import { matchToOpen } from "./match-to-open.ts";
import { openOutbox } from "./open-outbox.ts";

/** Where a person is on the way to a point. */
export type Place =
  | { readonly at: "opening" }
  | { readonly at: "enter"; readonly code?: string; readonly refused?: CourtsideRefused }
  | { readonly at: "choose"; readonly courtside: Courtside }
  | { readonly at: "chart"; readonly courtside: Courtside; readonly match: CourtsideMatch };

/** The named match, or the one that opens by itself, or a choice. */
export const placeFor = (courtside: Courtside, matchId: string | undefined): Place => {
  const named = courtside.matches.find((match) => match.matchId === matchId);
  const match = named ?? matchToOpen(courtside);
  return match ? { at: "chart", courtside, match } : { at: "choose", courtside };
};

/** What to show when the server does not let this phone in, or is not reached. */
const placeWithout = async (refused: CourtsideRefused, outbox: Outbox): Promise<Place> => {
  const known = refused.code === "unavailable" ? await courtsideOnPhone(outbox) : undefined;
  return known ? { at: "choose", courtside: known } : { at: "enter", refused };
};

/**
 * Where this phone is, from the outbox that it opens first. A code in the link comes before whatever the phone
 * was let into earlier, also when such a link is followed while the pad is open.
 */
export const usePlace = (matchId: string | undefined) => {
  const [place, go] = useState<Place>({ at: "opening" });
  const [outbox, setOutbox] = useState<Outbox>();
  const code = useRef<string | undefined>(undefined);

  useEffect(() => {
    let wanted = true;
    const open = async () => {
      const held = await openOutbox();
      if (!wanted) return;
      setOutbox(held);
      code.current ??= takeLinkedCode();
      if (code.current !== undefined) return go({ at: "enter", code: code.current });
      const read = await readCourtside(matchId);
      const next = read.ok ? placeFor(read.value, matchId) : await placeWithout(read.error, held);
      if (wanted) go(next);
    };
    const followed = () => {
      const linked = takeLinkedCode();
      if (linked !== undefined) go({ at: "enter", code: linked });
    };
    void open();
    window.addEventListener("hashchange", followed);
    return () => {
      wanted = false;
      window.removeEventListener("hashchange", followed);
    };
  }, [matchId]);

  /** Reads the court anew; a person then chooses the match. */
  const look = useCallback(
    (held: Outbox) => {
      const read = async () => {
        const answer = await readCourtside(matchId);
        go(answer.ok ? { at: "choose", courtside: answer.value } : await placeWithout(answer.error, held));
      };
      void read();
    },
    [matchId],
  );
  return { place, outbox, go, look };
};
