import { createContext, useContext } from "react";
import type { OpenedAlerts } from "../alerts/open-alerts.ts";
import type { ChoiceStore } from "./choice/choice-store.ts";
import type { LookStore } from "./look/look-store.ts";

/** What staff have on a board beside the courts; a public wall has none of it. */
export interface BoardTools {
  readonly choice: ChoiceStore;
  readonly look: LookStore;
  /** The alerts of the day, the first thing in the panel. */
  readonly alerts: OpenedAlerts;
}

export const BoardToolsContext = createContext<BoardTools | null>(null);

/** Null on a public wall. */
export const useBoardTools = (): BoardTools | null => useContext(BoardToolsContext);
