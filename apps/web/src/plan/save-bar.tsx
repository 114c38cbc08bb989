import { ActionButton } from "../form/action-button.tsx";
import form from "../form/form.module.css";
import styles from "./plan.module.css";
import type { PlanEditorState } from "./use-plan-editor.ts";

interface SaveBarProps {
  readonly editor: PlanEditorState;
  readonly onSave: () => void;
}

const stateWords = ({ isDirty, version, problems }: PlanEditorState): string => {
  const count = Object.keys(problems).length;
  if (count > 0) return count === 1 ? "1 rule has to be mended" : `${count} rules have to be mended`;
  if (isDirty) return "Not saved yet";
  return version === 0 ? "Nothing to save yet" : `Version ${version}`;
};

/** Always in sight: whether everything is saved, the button that saves it, and the way to the court. */
export function SaveBar({ editor, onSave }: SaveBarProps) {
  const { isDirty, isSaving, version, conflict, drop } = editor;
  return (
    <div className={styles.bar} data-dirty={isDirty}>
      <p data-testid="save-state">{stateWords(editor)}</p>
      <a className={`${form.button} ${styles.toTry}`} href="#try">
        Try it
      </a>
      {isDirty ? <ActionButton label="Drop" about="changes" onPress={drop} /> : null}
      {isDirty && !conflict ? (
        <ActionButton
          primary
          label={`Save version ${version + 1}`}
          pendingLabel="Saving"
          pending={isSaving}
          onPress={onSave}
        />
      ) : null}
    </div>
  );
}
