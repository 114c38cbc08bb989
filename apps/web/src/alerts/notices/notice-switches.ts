import type { ChoiceStorage } from "../../board/choice/choice-store.ts";
import { parseJson } from "../parse-json.ts";

/** How this device draws attention to a notice, beside showing it. */
export interface NoticeSwitches {
  readonly sound: boolean;
  readonly vibration: boolean;
}

export const SILENT: NoticeSwitches = { sound: false, vibration: false };

export interface SwitchStore {
  readonly get: () => NoticeSwitches;
  readonly set: (switches: NoticeSwitches) => void;
  readonly subscribe: (changed: () => void) => () => void;
}

const KEY = "courtloom-notices";

/** Both are off until somebody turns them on, on this device and for all who use it. SPEC rule AS23. */
export const createSwitchStore = (storage: ChoiceStorage | undefined): SwitchStore => {
  const listeners = new Set<() => void>();
  const read = parseJson(storage?.getItem(KEY) ?? null) as
    | Partial<Record<string, unknown>>
    | null
    | undefined;
  let switches: NoticeSwitches = { sound: read?.sound === true, vibration: read?.vibration === true };
  return {
    get: () => switches,
    set: (next) => {
      switches = next;
      try {
        storage?.setItem(KEY, JSON.stringify(next));
      } catch {
        // Full or refused: the switches last as long as the page.
      }
      for (const listener of listeners) listener();
    },
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
  };
};
