import { type FormEvent, type InputHTMLAttributes, useState } from "react";
import { spacedCode } from "../desk/code-links.ts";
import { enterCourtside } from "./ask-courtside.ts";
import type { Courtside, CourtsideRefused } from "./courtside.ts";
import styles from "./enter.module.css";
import pad from "./pad.module.css";
import { courtsideWords } from "./refusal-words.ts";

interface EnterFormProps {
  readonly name: string;
  /** From the link that was followed; then only the name is asked, unless the code is refused. */
  readonly code: string | undefined;
  readonly refused: CourtsideRefused | undefined;
  /** Entries on this phone that wait for a code. */
  readonly unsent: number;
  /** Goes on with the match that this phone charted last, without the server; absent when there is none. */
  readonly onGoOn?: (() => void) | undefined;
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

/** Sends what was entered, and holds what came of it. */
const useEntering = (
  refused: CourtsideRefused | undefined,
  onEntered: (courtside: Courtside, name: string) => void,
) => {
  const [problem, setProblem] = useState(refused && refused.code !== "signed_out" ? refused : undefined);
  const [busy, setBusy] = useState(false);
  const enter = async (code: string, name: string): Promise<void> => {
    setBusy(true);
    const entered = await enterCourtside({ code, name });
    setBusy(false);
    if (entered.ok) onEntered(entered.value, name);
    else setProblem(entered.error);
  };
  return { problem, busy, enter };
};

/** A court code and a name: all that a helper needs. */
export const EnterForm = (props: EnterFormProps) => {
  const { name: usualName, code: linked, refused, unsent, onGoOn, onEntered } = props;
  const [code, setCode] = useState(linked ?? "");
  const [name, setName] = useState(usualName);
  const { problem, busy, enter } = useEntering(refused, onEntered);
  const codeWrong = problem?.code.startsWith("code") ?? false;
  const asksCode = linked === undefined || codeWrong;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    void enter(code.trim(), name.trim());
  };
  return (
    <main>
      <form className={`${styles.enter} ${pad.buttons}`} onSubmit={submit} noValidate>
        <h1>Chart a court</h1>
        {asksCode ? (
          <p>The desk has a code for each court. Who hands a match over shows one on their phone.</p>
        ) : (
          <p data-testid="linked-code">
            Code <b>{spacedCode(code)}</b>, from the link. Who charts?
          </p>
        )}
        {unsent > 0 && (
          <p className={styles.problem} data-testid="enter-unsent">
            {unsent} unsent on this phone. They are kept, and sent once their court’s code is entered.
          </p>
        )}
        {asksCode && (
          <Field
            label="Court code or hand-over code"
            name="code"
            value={code}
            onText={setCode}
            wrong={codeWrong}
            autoComplete="off"
            autoCapitalize="characters"
            autoCorrect="off"
            spellCheck={false}
            enterKeyHint="next"
          />
        )}
        <Field
          label="Your name"
          name="name"
          value={name}
          onText={setName}
          wrong={problem?.code === "name_missing"}
          autoComplete="name"
          autoFocus={!asksCode}
          maxLength={40}
          enterKeyHint="go"
        />
        {problem && (
          <p id="enter-problem" role="alert" className={styles.problem} data-testid="enter-problem">
            {courtsideWords(problem)}
          </p>
        )}
        <button
          type="submit"
          className={pad.primary}
          disabled={busy || code.trim() === "" || name.trim() === ""}
        >
          {busy ? "Checking…" : "Open the court"}
        </button>
        {onGoOn && (
          <button type="button" className={pad.secondary} onClick={onGoOn} data-testid="go-on-without">
            Go on charting; send it later
          </button>
        )}
      </form>
    </main>
  );
};
