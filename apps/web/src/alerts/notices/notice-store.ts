import { type AlertsMirror, alertKeyText } from "@courtloom/sync";
import type { ChoiceStorage } from "../../board/choice/choice-store.ts";
import { parseJson } from "../parse-json.ts";
import { isOpen } from "../state-words.ts";

/** So many presented notices are remembered; a match has 5 at most. */
const MOST_REMEMBERED = 500;

export interface NoticeStore {
  /** Keys of the alerts whose notices stand on this page, as texts. Keeps its identity while none comes or goes. */
  readonly get: () => readonly string[];
  readonly dismiss: (text: string) => void;
  readonly subscribe: (changed: () => void) => () => void;
  readonly close: () => void;
}

export interface NoticeStoreOptions {
  readonly mirror: Pick<AlertsMirror, "get" | "subscribe">;
  readonly storage: ChoiceStorage | undefined;
  readonly account: string;
  /** Called once for each bundle that is presented. */
  readonly present: () => void;
}

/**
 * Presents what this person is told of, each alert once on this device, whatever is reloaded or reconnected, and in
 * one of several open pages. An alert that is over by then is not presented: the list has it. SPEC rule AS22.
 */
export const createNoticeStore = ({ mirror, storage, account, present }: NoticeStoreOptions): NoticeStore => {
  const key = `courtloom-told-${account}`;
  const listeners = new Set<() => void>();
  const here = new Set<string>();
  let shown: readonly string[] = [];

  const remembered = (): readonly string[] => {
    const read = parseJson(storage?.getItem(key) ?? null);
    return Array.isArray(read) ? read.filter((text) => typeof text === "string") : [];
  };
  /** Those of the texts that no page of this device has presented; from now on this one has. */
  const claim = (texts: readonly string[]): readonly string[] => {
    const unknown = texts.filter((text) => !here.has(text));
    if (unknown.length === 0) return [];
    const before = remembered();
    for (const text of unknown) here.add(text);
    const fresh = unknown.filter((text) => !before.includes(text));
    try {
      storage?.setItem(key, JSON.stringify([...before, ...fresh].slice(-MOST_REMEMBERED)));
    } catch {
      // Full or refused: remembered as long as the page.
    }
    return fresh;
  };
  const become = (next: readonly string[]) => {
    shown = next;
    for (const listener of listeners) listener();
  };
  const look = () => {
    const { told, lines } = mirror.get().alerts;
    // Told of before its line came: it waits for the line, which says what there is to say.
    const known = told.map(alertKeyText).filter((text) => lines.has(text));
    const fresh = claim(known).filter((text) => {
      const line = lines.get(text);
      return line !== undefined && isOpen(line);
    });
    if (fresh.length === 0) return;
    become([...fresh, ...shown]);
    present();
  };
  const stop = mirror.subscribe(look);
  look();

  return {
    get: () => shown,
    dismiss: (text) => become(shown.filter((each) => each !== text)),
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    close: stop,
  };
};
