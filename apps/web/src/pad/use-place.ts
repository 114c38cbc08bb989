import type { Outbox } from "@courtloom/sync";
import { useCallback, useEffect, useRef, useState } from "react";
import { readCourtside } from "./ask-courtside.ts";
import type { Courtside, CourtsideMatch, CourtsideRefused } from "./courtside.ts";
import { courtsideOnPhone } from "./courtside-on-phone.ts";
import { takeLinkedCode } from "./linked-code.ts";
import { matchToOpen } from "./match-to-open.ts";
import { settleShell } from "./offline/shell.ts";
import { openOutbox } from "./open-outbox.ts";

/** Where a person is on the way to a point. */
export type Place =
  | { readonly at: "opening" }
  | {
      readonly at: "enter";
      readonly code?: string;
      readonly refused?: CourtsideRefused;
      /** The court that this phone charted last: it can be gone on with, whatever the server says. */
      readonly known?: Courtside;
    }
  | { readonly at: "choose"; readonly courtside: Courtside }
  | { readonly at: "chart"; readonly courtside: Courtside; readonly match: CourtsideMatch };

/** A phone that knows where it was does not wait longer for a server that may not answer. */
const KNOWN_ANSWER_WITHIN_MS = 2_500;

/** The match that a signed-in member of staff names in the address. */
const namedMatch = (): string | undefined =>
  new URLSearchParams(location.search).get("match")?.slice(0, 64) ?? undefined;

/** The named match, or the one that opens by itself, or a choice. */
export const placeFor = (courtside: Courtside, matchId: string | undefined): Place => {
  const named = courtside.matches.find((match) => match.matchId === matchId);
  const match = named ?? matchToOpen(courtside);
  return match ? { at: "chart", courtside, match } : { at: "choose", courtside };
};

/** The match that this phone goes on with: it charted it last, and it is still being played there. */
export const chartedLast = (courtside: Courtside, known: Courtside | undefined): string | undefined => {
  const last = known?.matches[0]?.matchId;
  const match = courtside.matches.find((each) => each.matchId === last);
  return match?.state === "playing" || match?.state === "suspended" ? last : undefined;
};

/** What to show when the server does not let this phone in, or is not reached. */
const placeWithout = (refused: CourtsideRefused, known: Courtside | undefined): Place => {
  const match = known?.matches[0];
  if (refused.code === "unavailable" && known && match) return { at: "chart", courtside: known, match };
  return { at: "enter", refused, ...(known ? { known } : {}) };
};

/** Where a phone is that was just opened. */
const firstPlace = async (outbox: Outbox): Promise<Place> => {
  const named = namedMatch();
  const known = await courtsideOnPhone(outbox, named);
  const read = await readCourtside(named, known && KNOWN_ANSWER_WITHIN_MS);
  if (!read.ok) return placeWithout(read.error, known);
  return placeFor(read.value, named ?? chartedLast(read.value, known));
};

/**
 * Where this phone is, from the outbox that it opens first. A code in the link comes before whatever the phone
 * was let into earlier, also when such a link is followed while the pad is open.
 */
export const usePlace = () => {
  const [place, go] = useState<Place>({ at: "opening" });
  const [outbox, setOutbox] = useState<Outbox>();
  const code = useRef<string | undefined>(undefined);

  useEffect(() => {
    let wanted = true;
    const open = async () => {
      await settleShell();
      const held = await openOutbox();
      if (!wanted) return;
      setOutbox(held);
      code.current ??= takeLinkedCode();
      if (code.current !== undefined) return go({ at: "enter", code: code.current });
      const next = await firstPlace(held);
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
  }, []);

  /** Reads the court anew; a person then chooses the match. */
  const look = useCallback((held: Outbox) => {
    const read = async () => {
      const named = namedMatch();
      const answer = await readCourtside(named);
      if (answer.ok) return go({ at: "choose", courtside: answer.value });
      const known = await courtsideOnPhone(held, named);
      const unreached = answer.error.code === "unavailable" && known;
      go(unreached ? { at: "choose", courtside: known } : placeWithout(answer.error, known));
    };
    void read();
  }, []);
  return { place, outbox, go, look };
};
