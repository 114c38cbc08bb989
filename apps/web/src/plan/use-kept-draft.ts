"use client";
import { useEffect, useMemo, useRef } from "react";
import { createDraftShelf } from "./kept-draft.ts";
import { contentOf } from "./plan-draft.ts";
import { isSameContent } from "./same.ts";
import type { PlanEditorState } from "./use-plan-editor.ts";

/** Brings back what was not saved when this page was left, and keeps what is not saved while it is open. */
export const useKeptDraft = (editor: PlanEditorState, memberId: string, playerId: string | null) => {
  const shelf = useMemo(
    () => createDraftShelf(() => sessionStorage, memberId, playerId),
    [memberId, playerId],
  );
  const isLookedFor = useRef(false);
  const { isDirty, draft, version, base, resume } = editor;
  useEffect(() => {
    if (!isLookedFor.current) {
      isLookedFor.current = true;
      const found = shelf.find();
      if (found && !isSameContent(contentOf(found.draft), base)) {
        resume(found.draft, found.expected);
        return;
      }
    }
    if (isDirty) shelf.keep({ expected: version, keptMs: Date.now(), draft });
    else shelf.drop();
  }, [shelf, isDirty, draft, version, base, resume]);
  return shelf;
};
