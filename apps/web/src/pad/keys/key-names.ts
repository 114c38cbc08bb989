import type { PadKey } from "./key-map.ts";

const NAMED: Readonly<Record<string, string>> = {
  ArrowLeft: "←",
  ArrowRight: "→",
  ArrowUp: "↑",
  ArrowDown: "↓",
  Escape: "Esc",
  Comma: ",",
  Period: ".",
};

/** What is printed on a key of a common keyboard; `printed` knows this one's letters, where the browser tells. */
export const keyName = (code: string, printed?: ReadonlyMap<string, string>): string => {
  const here = printed?.get(code);
  if (here) return here.toUpperCase();
  if (code.startsWith("Key")) return code.slice(3);
  if (code.startsWith("Digit")) return code.slice(5);
  return NAMED[code] ?? code;
};

/** A key as the map shows it: "Shift P"; "?" is the sign, wherever a keyboard has it. */
export const shownKey = ({ action, code, shift }: PadKey, printed?: ReadonlyMap<string, string>): string => {
  if (action === "keyMap") return "?";
  return shift ? `Shift ${keyName(code, printed)}` : keyName(code, printed);
};

/** A key as `aria-keyshortcuts` has it: "Shift+P", "Enter". */
export const ariaKey = ({ action, code, shift }: PadKey): string => {
  if (action === "keyMap") return "?";
  const name = /^(Key|Digit)/.test(code) ? keyName(code) : code;
  return shift ? `Shift+${name}` : name;
};
