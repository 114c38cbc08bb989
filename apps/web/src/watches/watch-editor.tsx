"use client";
import type { WatchFile } from "@courtloom/api";
import { ActionButton } from "../form/action-button.tsx";
import { ProblemNote } from "../form/problem-note.tsx";
import { sayWhen } from "../plan/say-when.ts";
import { ChoiceFields } from "./choice-fields.tsx";
import { OwnField } from "./own-field.tsx";
import { useWatchEditor, type WatchEditorState } from "./use-watch-editor.ts";
import { WatchConflict } from "./watch-conflict.tsx";
import { academyChoice, chosenOf, rowOf } from "./watch-draft.ts";
import { choiceWords } from "./watch-words.ts";
import styles from "./watches.module.css";

interface WatchEditorProps {
  readonly file: WatchFile;
  /** Null: the academy's settings. */
  readonly playerId: string | null;
  readonly timeZone: string;
}

const stateWords = (editor: WatchEditorState, playerId: string | null, timeZone: string): string => {
  if (editor.isDirty) return "Not saved yet";
  const row = rowOf(editor.file, playerId);
  if (row === null)
    return playerId === null ? "Nobody has chosen yet; this holds until somebody does" : "As the academy's";
  return `Version ${row.version}, saved by ${row.savedByName ?? "somebody who has left"}, ${sayWhen(row.savedMs, timeZone)}`;
};

function SaveLine({
  editor,
  ...rest
}: Omit<WatchEditorProps, "file"> & { readonly editor: WatchEditorState }) {
  return (
    <div className={styles.bar} data-dirty={editor.isDirty}>
      <p data-testid="watch-state">{stateWords(editor, rest.playerId, rest.timeZone)}</p>
      {editor.isDirty && !editor.theirs ? (
        <>
          <ActionButton label="Drop" about="changes" onPress={editor.drop} />
          <ActionButton
            primary
            label={`Save version ${editor.version + 1}`}
            pendingLabel="Saving"
            pending={editor.isSaving}
            onPress={editor.save}
          />
        </>
      ) : null}
    </div>
  );
}

/** What is watched of everybody, or of one player, to read and change. */
export function WatchEditor({ file: first, playerId, timeZone }: WatchEditorProps) {
  const editor = useWatchEditor(first, playerId);
  const { draft, file, theirs } = editor;
  return (
    <div className={styles.editor}>
      {theirs ? (
        <WatchConflict
          theirs={theirs}
          mine={chosenOf(draft)}
          timeZone={timeZone}
          onMine={editor.saveMine}
          onTheirs={editor.takeTheirs}
        />
      ) : null}
      {playerId === null ? null : (
        <OwnField
          isOwn={draft.isOwn}
          academys={choiceWords(academyChoice(file))}
          onChange={(isOwn) => editor.edit({ ...draft, isOwn })}
        />
      )}
      {draft.isOwn ? (
        <ChoiceFields
          choice={draft.choice}
          file={file}
          problem={editor.problem}
          onChange={(choice) => editor.edit({ ...draft, choice })}
        />
      ) : null}
      <ProblemNote sentence={editor.sentence} />
      <p className={editor.notice ? styles.notice : "vh"} role="status">
        {editor.notice}
      </p>
      <SaveLine editor={editor} playerId={playerId} timeZone={timeZone} />
    </div>
  );
}
