import type { Outbox } from "@courtloom/sync";
import { readCourtside } from "../ask-courtside.ts";
import type { Courtside, CourtsideMatch } from "../courtside.ts";
import { courtsideOnPhone } from "../courtside-on-phone.ts";

/** A match with the court and the person that it is charted as. */
export interface ChartedCourt {
  readonly courtside: Courtside;
  readonly match: CourtsideMatch;
}

const courtOf = (courtside: Courtside | undefined, matchId: string): ChartedCourt | undefined => {
  const match = courtside?.matches.find((each) => each.matchId === matchId);
  return courtside && match && { courtside, match };
};

/**
 * The court of a match: as this phone knows it from charting it, which needs no network, else as the server
 * says. `undefined` when neither knows it.
 */
export const findCourt = async (outbox: Outbox, matchId: string): Promise<ChartedCourt | undefined> => {
  const held = courtOf(await courtsideOnPhone(outbox, matchId), matchId);
  if (held) return held;
  const read = await readCourtside(matchId);
  return read.ok ? courtOf(read.value, matchId) : undefined;
};
