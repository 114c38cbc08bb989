import { useCallback, useEffect, useLayoutEffect, useRef } from "react";
import { flushSync } from "react-dom";
import { type CourtCell, cellOf } from "./court-cells.ts";
import { actionsOf, type PadAction, type PressedKey } from "./key-map.ts";

/** What can be done at this moment, each as one call; what is absent cannot. */
export type PadActions = Partial<Record<PadAction, () => void>>;

export interface KeysOptions {
  readonly actions: PadActions;
  /** Draws by keys; `undefined` where nothing is drawn. */
  readonly onCell: ((cell: CourtCell) => void) | undefined;
  /** A point is being stored: keys wait for it, so that none falls into the point before. */
  readonly busy: boolean;
  /** False while keys are switched off. */
  readonly isOn: boolean;
  /** A key of the table that does nothing now. */
  readonly onIdle: (pressed: PressedKey) => void;
}

/** A held key would chart a point at each repetition; with Ctrl, Alt or the system's key it is the browser's. */
const isForPad = (event: KeyboardEvent): boolean =>
  !(
    event.defaultPrevented ||
    event.ctrlKey ||
    event.metaKey ||
    event.altKey ||
    event.repeat ||
    event.isComposing
  );

/**
 * Keys act while the focus is on the page itself, on the court, or on a button that a pointer has just pressed.
 * A control that Tab has reached keeps all its keys to itself, and so do fields and open dialogs; screen readers
 * keep their letters, as those reach the page only from the court. SPEC PD66.
 */
const isListening = (pointed: Element | null): boolean => {
  if (document.querySelector("dialog[open]")) return false;
  const { activeElement } = document;
  if (!activeElement || activeElement === document.body) return true;
  return activeElement.getAttribute("role") === "application" || activeElement === pointed;
};

const toCourt = (): void => {
  const court = document.querySelector<HTMLElement | SVGElement>("main [role=application]");
  if (court) court.focus();
  else if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
};

/** What was pressed for the pad; `undefined` when the key belongs to somebody else. */
const readPress = (event: KeyboardEvent, pointed: Element | null): PressedKey | undefined => {
  if (!isForPad(event)) return undefined;
  if (isListening(pointed)) {
    const pressed = { code: event.code, key: event.key, shift: event.shiftKey };
    return cellOf(pressed.code) || actionsOf(pressed).length > 0 ? pressed : undefined;
  }
  // From any control of the pad one key leads back to where letters act.
  const isInPad = document.activeElement?.closest("main button, main select") != null;
  if (event.key === "Escape" && isInPad && !document.querySelector("dialog[open]")) toCourt();
  return undefined;
};

const act = (pressed: PressedKey, { actions, onCell, onIdle }: KeysOptions): void => {
  const cell = pressed.shift ? undefined : cellOf(pressed.code);
  if (cell) {
    onCell?.(cell);
    return;
  }
  const known = actionsOf(pressed).map((action) => actions[action]);
  const possible = known.find((each) => each !== undefined);
  if (possible) possible();
  else if (known.length > 0) onIdle(pressed);
};

/** Handles the pad's keys while the screen that they belong to is shown. */
export const useKeys = (options: KeysOptions): void => {
  const latest = useRef(options);
  const waiting = useRef<PressedKey[]>([]);
  // Each key acts on what the one before it left on the screen, however fast they come.
  const drain = useCallback(() => {
    while (!latest.current.busy) {
      const next = waiting.current.shift();
      if (!next) return;
      flushSync(() => act(next, latest.current));
    }
  }, []);
  useLayoutEffect(() => {
    latest.current = options;
    if (waiting.current.length > 0) queueMicrotask(drain);
  });
  const { isOn } = options;
  useEffect(() => {
    if (!isOn) return;
    let pointed: Element | null = null;
    const onKey = (event: KeyboardEvent) => {
      const pressed = readPress(event, pointed);
      if (!pressed) return;
      event.preventDefault();
      waiting.current.push(pressed);
      drain();
    };
    // A click by a pointer has a count; one that Enter or Space makes has none.
    const onClick = (event: MouseEvent) => {
      pointed = event.detail > 0 ? document.activeElement : null;
    };
    window.addEventListener("keydown", onKey);
    window.addEventListener("click", onClick);
    return () => {
      window.removeEventListener("keydown", onKey);
      window.removeEventListener("click", onClick);
    };
  }, [isOn, drain]);
};
