import { Field } from "../form/field.tsx";
import styles from "./plan.module.css";
import type { PlanEditorState } from "./use-plan-editor.ts";

/** As the server has it. */
const MOST_COURT_WORDS = 140;

const FIELDS = [
  ["sentence", "One sentence for the change of ends"],
  ["question", "One question for the change of ends"],
] as const;

interface CourtWordsFieldsProps {
  readonly editor: PlanEditorState;
  readonly isPlayers: boolean;
}

/** What staff may say to the player in a match, agreed beforehand. SPEC PL13. */
export function CourtWordsFields({ editor, isPlayers }: CourtWordsFieldsProps) {
  const { draft, edit, file } = editor;
  return (
    <section className={styles.section} aria-labelledby="court-words">
      <h2 id="court-words">At a change of ends</h2>
      <p>
        For practice, and where coaching is permitted: the pad of signed-in staff shows both then. Nobody else
        sees them during a match.
      </p>
      {FIELDS.map(([part, label]) => {
        const academys = isPlayers && draft[part].trim() === "" ? (file.academy?.[part] ?? "") : "";
        return (
          <div key={part}>
            <Field label={label} hint={isPlayers ? "While it is empty, the academy's holds." : undefined}>
              {(control) => (
                <input
                  {...control}
                  className={`${control.className} said`}
                  maxLength={MOST_COURT_WORDS}
                  value={draft[part]}
                  onChange={({ target }) => edit({ kind: part, words: target.value })}
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
      })}
    </section>
  );
}
