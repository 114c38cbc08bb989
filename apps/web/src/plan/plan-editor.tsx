"use client";
import type { PlanFile } from "@courtloom/api";
import { judgeBall } from "@courtloom/decisions";
import { useRouter } from "next/navigation";
import { useRef, useState } from "react";
import { Field } from "../form/field.tsx";
import { ProblemNote } from "../form/problem-note.tsx";
import { ConflictPanel } from "./conflict-panel.tsx";
import { CourtWordsFields } from "./court-words-fields.tsx";
import { LeaveDialog } from "./leave-dialog.tsx";
import styles from "./plan.module.css";
import { holdingRules } from "./plan-draft.ts";
import { PlanHistory } from "./plan-history.tsx";
import { RuleList } from "./rule-list.tsx";
import { SaveBar } from "./save-bar.tsx";
import { ballToJudge, type TriedBall } from "./tried-ball.ts";
import { TryIt } from "./try-it.tsx";
import { useKeptDraft } from "./use-kept-draft.ts";
import { useLeaveGuard } from "./use-leave-guard.ts";
import { type PlanEditorState, usePlanEditor } from "./use-plan-editor.ts";

interface PlanEditorProps {
  readonly file: PlanFile;
  readonly memberId: string;
  readonly timeZone: string;
}

const newRuleId = (): string => {
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return `rule-${[...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("")}`;
};

function PlanWords({ editor, isPlayers }: { readonly editor: PlanEditorState; readonly isPlayers: boolean }) {
  const { draft, edit, file } = editor;
  const academys = isPlayers && draft.words.trim() === "" ? (file.academy?.words ?? "") : "";
  return (
    <div className={styles.section}>
      <Field
        label="The plan in your own words"
        hint={
          isPlayers
            ? "For this player. While it is empty, the academy's words hold."
            : "One or two sentences that every player hears."
        }
      >
        {(control) => (
          <textarea
            {...control}
            className={`${control.className} said`}
            rows={3}
            maxLength={1000}
            value={draft.words}
            onChange={({ target }) => edit({ kind: "words", words: target.value })}
          />
        )}
      </Field>
      {academys === "" ? null : (
        <p>
          The academy's: <span className="said">{academys}</span>
        </p>
      )}
    </div>
  );
}

function Meanwhile({ editor, timeZone }: { readonly editor: PlanEditorState; readonly timeZone: string }) {
  const { conflict, content, notice, sentence } = editor;
  return (
    <>
      {conflict ? (
        <ConflictPanel
          conflict={conflict}
          mine={content}
          timeZone={timeZone}
          onTogether={editor.together}
          onMine={editor.saveMine}
          onTheirs={editor.takeTheirs}
        />
      ) : null}
      <ProblemNote sentence={sentence} />
      <p role="status" className={notice === "" ? "vh" : styles.notice}>
        {notice}
      </p>
    </>
  );
}

/** A plan with its rules, a court to try it on, and its versions. SPEC PL1 to PL20. */
export function PlanEditor({ file, memberId, timeZone }: PlanEditorProps) {
  const editor = usePlanEditor(file);
  const router = useRouter();
  const [ball, setBall] = useState<TriedBall | undefined>(undefined);
  const top = useRef<HTMLDivElement>(null);
  const isPlayers = file.player !== null;
  const shelf = useKeptDraft(editor, memberId, file.player?.playerId ?? null);
  const guard = useLeaveGuard(editor.isDirty);
  const rules = holdingRules(editor.draft);
  const judgement = ball && judgeBall({ rules: rules.map(({ rule }) => rule) }, ballToJudge(ball));
  const save = (): void => {
    if (!editor.save()) top.current?.scrollIntoView({ block: "start" });
  };
  const leave = (page: string, isKept: boolean): void => {
    if (!isKept) shelf.drop();
    guard.answer();
    router.push(page);
  };
  const { asked } = guard;
  return (
    <div ref={top} className={styles.editor}>
      <div className={styles.main}>
        <Meanwhile editor={editor} timeZone={timeZone} />
        <PlanWords editor={editor} isPlayers={isPlayers} />
        <CourtWordsFields editor={editor} isPlayers={isPlayers} />
        <section className={styles.section} aria-labelledby="rules">
          <h2 id="rules">Rules</h2>
          <p>Of several that fit a ball the first holds{isPlayers ? "; own rules come first" : ""}.</p>
          <RuleList
            draft={editor.draft}
            isPlayers={isPlayers}
            problems={editor.problems}
            drawnRuleId={judgement?.ruleId}
            onEdit={editor.edit}
            newId={newRuleId}
          />
        </section>
        <Field label="What changed, in a few words" hint="Not needed. It stands in the list of versions.">
          {(control) => (
            <input
              {...control}
              maxLength={120}
              value={editor.note}
              onChange={({ target }) => editor.setNote(target.value)}
            />
          )}
        </Field>
      </div>
      <div className={styles.beside}>
        <TryIt rules={rules} ball={ball} judgement={judgement} onBall={setBall} />
      </div>
      <div className={styles.past}>
        <PlanHistory versions={editor.file.versions} timeZone={timeZone} onTakeBack={editor.takeBack} />
      </div>
      <SaveBar editor={editor} onSave={save} />
      {asked === undefined ? null : (
        <LeaveDialog
          onStay={guard.answer}
          onKeep={() => leave(asked, true)}
          onDrop={() => leave(asked, false)}
        />
      )}
    </div>
  );
}
