import { createContext, type ReactNode, useContext } from "react";
import type { ChoiceStore } from "./choice/choice-store.ts";
import type { LookStore } from "./look/look-store.ts";

/** What staff have on a board beside the courts; a public wall has none of it. */
export interface BoardTools {
  readonly choice: ChoiceStore;
  readonly look: LookStore;
  /** The alerts of the day, the first thing in the panel; absent while there is nothing to show. */
  readonly alerts?: ReactNode;
}

export const BoardToolsContext = createContext<BoardTools | null>(null);

/** Null on a public wall. */
export const useBoardTools = (): BoardTools | null => useContext(BoardToolsContext);
