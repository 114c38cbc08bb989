import type { BoardHeard, BoardSnapshot, BoardTile, Heard, Tile } from "@courtloom/protocol";

export interface BoardDay {
  readonly dayId: string;
  readonly dayName: string;
  readonly academyName: string;
  readonly timeZone: string;
}

/** One court on the board. Keeps its identity while nothing of it changes, so that only a changed tile is drawn again. */
export interface BoardCourt {
  readonly tile: Tile;
  /** Newest word of the court's phone; null when never heard. */
  readonly heard: Heard | null;
  /** Server's stamp of the tile: its clock, but never back within a subscription. */
  readonly serverMs: number;
  /** The subscription that brought the tile. */
  readonly session: number;
}

/** All courts of a day. Pure data; courts in the order of their numbers. */
export interface BoardState {
  readonly session: number;
  readonly day: BoardDay | undefined;
  readonly order: readonly string[];
  readonly courts: ReadonlyMap<string, BoardCourt>;
  /** Server's clock less this device's monotonic clock, in ms. */
  readonly offsetMs: number;
}

export const emptyBoard: BoardState = {
  session: 0,
  day: undefined,
  order: [],
  courts: new Map(),
  offsetMs: 0,
};

/** A new subscription begins: what its snapshot says replaces what was held before it. */
export const openSession = (board: BoardState): BoardState => ({ ...board, session: board.session + 1 });

/**
 * May a tile made at `serverMs` replace what is held? Within a subscription the server stamps its tiles in
 * order, whatever its clock does; pos does not tell, since a court's next match and a restored log begin at a
 * lower one. A new subscription's word replaces an older one's: another node's clock may differ. SPEC rule MR10.
 */
const replaces = (held: BoardCourt | undefined, serverMs: number, session: number): boolean =>
  held === undefined || held.session < session || serverMs >= held.serverMs;

/** The newer of two words of one match's phone. */
const newerHeard = (held: Heard | null | undefined, heard: Heard | null): Heard | null => {
  if (!held || held.matchId !== heard?.matchId) return heard;
  return (heard.heardMs ?? 0) >= (held.heardMs ?? 0) ? heard : held;
};

const sameHeard = (a: Heard | null, b: Heard | null): boolean =>
  a === b || (a?.matchId === b?.matchId && a?.heardMs === b?.heardMs && a?.unsent === b?.unsent);

const withTile = (
  held: BoardCourt | undefined,
  tile: Tile,
  serverMs: number,
  session: number,
): BoardCourt => {
  const sameMatch = held !== undefined && held.session === session && held.tile.matchId === tile.matchId;
  return { tile, heard: sameMatch ? newerHeard(held.heard, tile.heard) : tile.heard, serverMs, session };
};

const byNumber = (courts: ReadonlyMap<string, BoardCourt>): string[] =>
  [...courts.entries()].sort(([, a], [, b]) => a.tile.courtNo - b.tile.courtNo).map(([id]) => id);

const sameOrder = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((id, i) => id === b[i]);

const withCourts = (board: BoardState, courts: ReadonlyMap<string, BoardCourt>): BoardState => {
  const order = byNumber(courts);
  return { ...board, courts, order: sameOrder(order, board.order) ? board.order : order };
};

/** The least delayed message of a subscription tells the offset best: delay only ever makes it smaller. */
const offsetFrom = (board: BoardState, serverMs: number, monotonicMs: number): number =>
  Math.max(board.offsetMs, serverMs - monotonicMs);

/** Takes the answer to a watch; courts that it does not name are gone. */
export const takeSnapshot = (board: BoardState, reply: BoardSnapshot, monotonicMs: number): BoardState => {
  const courts = new Map<string, BoardCourt>();
  for (const tile of reply.tiles) {
    const held = board.courts.get(tile.courtId);
    const next = replaces(held, reply.serverMs, board.session)
      ? withTile(held, tile, reply.serverMs, board.session)
      : held;
    if (next) courts.set(tile.courtId, next);
  }
  for (const [id, held] of board.courts) {
    const newer = held.session === board.session && held.serverMs > reply.serverMs;
    if (newer && !courts.has(id)) courts.set(id, held);
  }
  const { dayId, dayName, academyName, timeZone } = reply;
  const day = { dayId, dayName, academyName, timeZone };
  const sameDay = JSON.stringify(day) === JSON.stringify(board.day);
  const next = withCourts(board, courts);
  return { ...next, day: sameDay ? board.day : day, offsetMs: reply.serverMs - monotonicMs };
};

/** Takes one court's change. */
export const takeTile = (board: BoardState, message: BoardTile, monotonicMs: number): BoardState => {
  const { tile, serverMs } = message;
  const held = board.courts.get(tile.courtId);
  const offsetMs = offsetFrom(board, serverMs, monotonicMs);
  if (!replaces(held, serverMs, board.session)) {
    return offsetMs === board.offsetMs ? board : { ...board, offsetMs };
  }
  const courts = new Map(board.courts).set(tile.courtId, withTile(held, tile, serverMs, board.session));
  return { ...withCourts(board, courts), offsetMs };
};

/** Takes which phones were heard. A match that is on no court here is passed over. */
export const takeHeard = (board: BoardState, message: BoardHeard, monotonicMs: number): BoardState => {
  const byMatch = new Map(message.heard.map((heard) => [heard.matchId, heard]));
  const courts = new Map(board.courts);
  let changed = false;
  for (const [id, court] of board.courts) {
    const heard = court.tile.matchId === null ? undefined : byMatch.get(court.tile.matchId);
    const next = heard ? newerHeard(court.heard, heard) : court.heard;
    if (sameHeard(next, court.heard)) continue;
    courts.set(id, { ...court, heard: next });
    changed = true;
  }
  const offsetMs = offsetFrom(board, message.serverMs, monotonicMs);
  if (!changed && offsetMs === board.offsetMs) return board;
  return { ...board, courts: changed ? courts : board.courts, offsetMs };
};
