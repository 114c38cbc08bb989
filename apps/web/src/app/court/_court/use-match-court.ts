import type { BoardCourt, BoardMirror } from "@courtloom/sync";
import { useSyncExternalStore } from "react";

const nothingChanges = () => () => {};

const find = (board: BoardMirror | null, matchId: string): BoardCourt | undefined => {
  if (board === null) return undefined;
  return [...board.get().board.courts.values()].find(({ tile }) => tile.matchId === matchId);
};

/** The court that a match is on now, as the day's board has it; undefined without a board or once another match is on. */
export const useMatchCourt = (board: BoardMirror | null, matchId: string): BoardCourt | undefined => {
  const read = () => find(board, matchId);
  return useSyncExternalStore(board?.subscribe ?? nothingChanges, read, read);
};
