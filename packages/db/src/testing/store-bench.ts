import type { EntryStore, HandedLead, HandOverAsk, MatchRef } from "../entry-store.ts";
import { laneOf, openingOf } from "./log-fixtures.ts";

export interface StoreUnderTest {
  readonly store: EntryStore;
  /** Makes a match known, as the day desk does; the academy "curlew" is there. */
  readonly addMatch: (match: MatchRef) => Promise<void>;
  /** Hands a lead over, as a code that was entered does. */
  readonly addHandOver: (handed: HandOverAsk & HandedLead) => Promise<void>;
  readonly close: () => Promise<void>;
}

export const ACADEMY = "curlew";

/** A store under test, with matches to try it on; each call makes a match of its own. */
export const createStoreBench = (under: () => StoreUnderTest) => {
  let count = 0;
  const store = (): EntryStore => under().store;
  const newMatch = async (): Promise<MatchRef> => {
    count += 1;
    const match = { academyId: ACADEMY, matchId: `match-${count}` };
    await under().addMatch(match);
    return match;
  };
  const openMatch = async (): Promise<MatchRef> => {
    const match = await newMatch();
    await store().openMatch({ ...match, opened: openingOf(match.matchId) });
    return match;
  };
  /** An open match whose lead is the lane `lead`. */
  const openLane = async (): Promise<MatchRef & { readonly laneId: string }> => {
    const match = await openMatch();
    await store().openLane(laneOf(ACADEMY, match.matchId, "lead"));
    return { ...match, laneId: "lead" };
  };
  const readAll = async (match: MatchRef) => {
    const page = await store().read({ ...match, after: 0, limit: 1000 });
    if (!page.ok) throw new Error(page.error.code);
    return page.value.entries;
  };
  const addHandOver = (handed: HandOverAsk & HandedLead): Promise<void> => under().addHandOver(handed);
  return { store, newMatch, addHandOver, openMatch, openLane, readAll };
};

export type StoreBench = ReturnType<typeof createStoreBench>;
