import { createContext, useContext } from "react";
import { KEY_MAP, type PadAction } from "./key-map.ts";
import { ariaKey } from "./key-names.ts";

/** Whether single keys act now, so that a control says its key only where pressing it does something. */
export const KeysOnContext = createContext(false);

const SHORTCUTS: ReadonlyMap<PadAction, string> = new Map(
  KEY_MAP.map((each) => [each.action, ariaKey(each)]),
);

/** Answers the `aria-keyshortcuts` of a control; `undefined` when it has none or keys are off. */
export const useShortcut = (): ((action: PadAction | undefined) => string | undefined) => {
  const isOn = useContext(KeysOnContext);
  return (action) => (isOn && action ? SHORTCUTS.get(action) : undefined);
};
