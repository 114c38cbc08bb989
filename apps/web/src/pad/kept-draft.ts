import type { DraftState } from "./draft-reducer.ts";

/** A half-charted point as a phone keeps it: whose lane, and the moment in the match that it belongs to. */
export interface KeptDraft {
  readonly laneId: string;
  /** See `momentOf`. */
  readonly moment: string;
  readonly state: Pick<DraftState, "draft" | "past">;
}

/** Raised when the shape of a draft changes; what an older page kept is then let go. */
const KEY = "courtloom-draft-1";
/** One for each match that a person goes back and forth between, and no more. */
const MOST = 4;

const isKept = (value: unknown): value is KeptDraft => {
  if (typeof value !== "object" || value === null) return false;
  const { laneId, moment, state } = value as Partial<Record<keyof KeptDraft, unknown>>;
  if (typeof laneId !== "string" || typeof moment !== "string") return false;
  if (typeof state !== "object" || state === null) return false;
  const { draft, past } = state as { readonly draft?: { readonly shots?: unknown }; readonly past?: unknown };
  return Array.isArray(draft?.shots) && Array.isArray(past);
};

/** What was stored, newest first; nothing when it is not what this page stores. */
export const parseDrafts = (stored: string | null): readonly KeptDraft[] => {
  if (stored === null) return [];
  try {
    const raw: unknown = JSON.parse(stored);
    return Array.isArray(raw) ? raw.filter(isKept) : [];
  } catch {
    // Cut off, or written by something else: there is no draft to go on with.
    return [];
  }
};

const readDrafts = (): readonly KeptDraft[] => {
  try {
    return parseDrafts(localStorage.getItem(KEY));
  } catch {
    // The browser forbids storage; a draft then lasts as long as the page.
    return [];
  }
};

/** The draft of a lane, if it belongs to this very moment of the match. */
export const draftFor = (laneId: string, moment: string): KeptDraft["state"] | undefined =>
  readDrafts().find((kept) => kept.laneId === laneId && kept.moment === moment)?.state;

/** Keeps a lane's draft in place of its earlier one, or lets it go. Answers whether it could be stored. */
export const keepDraft = (laneId: string, kept: Omit<KeptDraft, "laneId"> | undefined): boolean => {
  const others = readDrafts().filter((each) => each.laneId !== laneId);
  const next = kept ? [{ laneId, ...kept }, ...others].slice(0, MOST) : others;
  try {
    localStorage.setItem(KEY, JSON.stringify(next));
    return true;
  } catch {
    return false;
  }
};
