import { type BoardChoice, EVERYTHING } from "./board-choice.ts";
import { choiceOn, keepChoice, readKept } from "./kept-choice.ts";

/** The part of a browser's storage that is used; a browser may refuse it altogether. */
export type ChoiceStorage = Pick<Storage, "getItem" | "setItem">;

export interface ChoiceStore {
  readonly get: () => BoardChoice;
  readonly set: (choice: BoardChoice) => void;
  readonly subscribe: (changed: () => void) => () => void;
  /** False where the device keeps nothing: then a choice lasts as long as the page. */
  readonly isKept: () => boolean;
}

/** A person's choice on one day, kept by this device for this account. SPEC rule BD44. */
export const createChoiceStore = (
  storage: ChoiceStorage | undefined,
  account: string,
  dayId: string,
): ChoiceStore => {
  const key = `courtloom-board-${account}`;
  const listeners = new Set<() => void>();
  let kept = storage !== undefined;
  const read = () => readKept(storage?.getItem(key) ?? null);
  let choice = storage ? choiceOn(read(), dayId) : EVERYTHING;
  return {
    get: () => choice,
    set: (next) => {
      choice = next;
      try {
        storage?.setItem(key, JSON.stringify(keepChoice(read(), dayId, next)));
      } catch {
        // Full or refused: the screen says that the choice is not kept.
        kept = false;
      }
      for (const listener of listeners) listener();
    },
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    isKept: () => kept,
  };
};
