import type { PlanDraft } from "./plan-draft.ts";

/** Changes that were not saved, with the version that they change. */
export interface KeptDraft {
  readonly expected: number;
  readonly keptMs: number;
  readonly draft: PlanDraft;
}

const NO_COURT_WORDS = { sentence: "", question: "" };

type Shelf = Pick<Storage, "getItem" | "setItem" | "removeItem">;

const keyOf = (memberId: string, playerId: string | null): string =>
  `courtloom-plan:${memberId}:${playerId ?? "academy"}`;

const isKept = (raw: unknown): raw is KeptDraft => {
  if (typeof raw !== "object" || raw === null) return false;
  const { expected, keptMs, draft } = raw as Partial<KeptDraft>;
  return typeof expected === "number" && typeof keptMs === "number" && Array.isArray(draft?.rules);
};

/**
 * Keeps what was not saved in this tab, by member and plan: leaving the page and coming back finds it, another
 * person on this device does not, and closing the tab ends it. Answers nothing where the device keeps nothing.
 */
export const createDraftShelf = (shelf: () => Shelf, memberId: string, playerId: string | null) => {
  const key = keyOf(memberId, playerId);
  const trying = <T>(work: (at: Shelf) => T, otherwise: T): T => {
    try {
      return work(shelf());
    } catch {
      // No storage, or no room in it: the page itself still has the changes and asks before it is left.
      return otherwise;
    }
  };
  return {
    keep: (kept: KeptDraft): boolean =>
      trying((at) => {
        at.setItem(key, JSON.stringify(kept));
        return true;
      }, false),
    find: (): KeptDraft | undefined =>
      trying((at) => {
        const raw: unknown = JSON.parse(at.getItem(key) ?? "null");
        // Kept by a page from before there were words for a change of ends: it had none.
        return isKept(raw) ? { ...raw, draft: { ...NO_COURT_WORDS, ...raw.draft } } : undefined;
      }, undefined),
    drop: (): void => trying((at) => at.removeItem(key), undefined),
  };
};
