import type { MatchView } from "@courtloom/match-log";
import { useEffect, useReducer, useRef } from "react";
import { EMPTY_STATE, reduceDraft } from "./draft-reducer.ts";
import { draftFor, keepDraft } from "./kept-draft.ts";
import { isEmptyDraft, type PointFrame } from "./point-draft.ts";

/** A moment in a match, as text: the same score after the same point, seen from the same place. */
export const momentOf = ({ score, points }: MatchView, frame: PointFrame): string =>
  JSON.stringify([points.length, points.at(-1)?.id ?? null, score, frame]);

/**
 * The point that is being charted. It is kept on the phone at each step and taken up again after a reload, if
 * the match is still at the moment that it was drawn at. SPEC PD20.
 */
export const useDraft = (laneId: string, moment: string) => {
  const [state, send] = useReducer(reduceDraft, EMPTY_STATE);
  const { draft, past } = state;
  const kept = useRef(draft);
  useEffect(() => {
    // Charting the point moves the match on before the draft is cleared: a draft is kept only when it changes.
    if (kept.current === draft) return;
    kept.current = draft;
    keepDraft(laneId, isEmptyDraft(draft) ? undefined : { moment, state: { draft, past } });
  }, [laneId, moment, draft, past]);
  useEffect(() => {
    if (!isEmptyDraft(draft)) return;
    const held = draftFor(laneId, moment);
    if (held) send({ type: "resumed", ...held });
  }, [laneId, moment, draft]);
  return [state, send] as const;
};
