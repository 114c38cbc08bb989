import { type FormEvent, type InputHTMLAttributes, useState } from "react";
import { enterCourtside } from "./ask-courtside.ts";
import type { Courtside, CourtsideRefused } from "./courtside.ts";
import enter from "./enter.module.css";
import styles from "./pad.module.css";
import { courtsideWords } from "./refusal-words.ts";

interface EnterFormProps {
  readonly name: string;
  readonly refused: CourtsideRefused | undefined;
  /** Entries on this phone that wait for a code. */
  readonly unsent: number;
  readonly onEntered: (courtside: Courtside, name: string) => void;
}

interface FieldProps extends InputHTMLAttributes<HTMLInputElement> {
  readonly label: string;
  /** Whether the problem below is about this field. */
  readonly wrong: boolean;
  readonly onText: (text: string) => void;
}

const Field = ({ label, wrong, onText, ...input }: FieldProps) => (
  <label>
    {label}
    <input
      {...input}
      onChange={(event) => onText(event.target.value)}
      aria-invalid={wrong}
      aria-describedby={wrong ? "enter-problem" : undefined}
      required
    />
  </label>
);

/** A court code and a name: all that a helper needs. */
export const EnterForm = ({ name: usualName, refused, unsent, onEntered }: EnterFormProps) => {
  const [code, setCode] = useState("");
  const [name, setName] = useState(usualName);
  const [problem, setProblem] = useState(refused && refused.code !== "signed_out" ? refused : undefined);
  const [busy, setBusy] = useState(false);
  const submit = async (event: FormEvent) => {
    event.preventDefault();
    setBusy(true);
    const entered = await enterCourtside({ code: code.trim(), name: name.trim() });
    setBusy(false);
    if (entered.ok) onEntered(entered.value, name.trim());
    else setProblem(entered.error);
  };
  return (
    <main>
      <form
        className={`${enter.enter} ${styles.buttons}`}
        onSubmit={(event) => void submit(event)}
        noValidate
      >
        <h1>Chart a court</h1>
        <p>The desk has a code for each court.</p>
        {unsent > 0 && (
          <p className={enter.problem} data-testid="enter-unsent">
            {unsent} unsent on this phone. They are kept, and sent once their court’s code is entered.
          </p>
        )}
        <Field
          label="Court code"
          name="code"
          value={code}
          onText={setCode}
          wrong={problem?.code.startsWith("code") ?? false}
          autoComplete="off"
          autoCapitalize="characters"
          autoCorrect="off"
          spellCheck={false}
          enterKeyHint="next"
        />
        <Field
          label="Your name"
          name="name"
          value={name}
          onText={setName}
          wrong={problem?.code === "name_missing"}
          autoComplete="name"
          maxLength={40}
          enterKeyHint="go"
        />
        {problem && (
          <p id="enter-problem" role="alert" className={enter.problem} data-testid="enter-problem">
            {courtsideWords(problem)}
          </p>
        )}
        <button
          type="submit"
          className={styles.primary}
          disabled={busy || code.trim() === "" || name.trim() === ""}
        >
          {busy ? "Checking…" : "Open the court"}
        </button>
      </form>
    </main>
  );
};
