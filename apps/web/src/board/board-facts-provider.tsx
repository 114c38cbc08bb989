import { type ReactNode, useMemo } from "react";
import { type BoardFacts, BoardFactsContext } from "./board-facts.ts";
import { useBoard } from "./use-board.ts";

/** Reads from the mirror, once, what everything within shares. */
export function BoardFactsProvider({ children }: { readonly children: ReactNode }) {
  const stale = useBoard((snapshot) => snapshot.state === "stale");
  const timeZone = useBoard((snapshot) => snapshot.board.day?.timeZone ?? "UTC");
  const facts = useMemo((): BoardFacts => ({ stale, timeZone }), [stale, timeZone]);
  return <BoardFactsContext value={facts}>{children}</BoardFactsContext>;
}
