import type { WatchChoice, WatchFile } from "@courtloom/api";
import { MOST_WATCHED } from "@courtloom/decisions";
import { RATES } from "@courtloom/match-log";
import { useId } from "react";
import { Field } from "../form/field.tsx";
import form from "../form/form.module.css";
import { toggleRate } from "./watch-draft.ts";
import { falseAlarmWords, judgedWords, matchesIn, tooFewWords, WATCHED_WORDS } from "./watch-words.ts";
import styles from "./watches.module.css";

/** Shares of matches to choose from; another one that was saved is offered too. */
const SHARES: readonly number[] = [0.2, 0.1, 0.05, 0.02, 0.01];

interface ChoiceFieldsProps {
  readonly choice: WatchChoice;
  readonly file: WatchFile;
  /** What has to be mended, and how. */
  readonly problem: string | undefined;
  readonly onChange: (choice: WatchChoice) => void;
}

function RateFields({ choice, file, problem, onChange }: ChoiceFieldsProps) {
  const id = useId();
  return (
    <fieldset className={styles.rates} aria-describedby={problem ? `${id}-problem` : undefined}>
      <legend>Rates watched, 1 to {MOST_WATCHED}</legend>
      {RATES.map((rate) => {
        const { label, tells } = WATCHED_WORDS[rate];
        const charted = file.charted[rate];
        const tooFew = charted < file.needed ? tooFewWords(rate, charted, file.needed) : undefined;
        const judged = judgedWords(file.judged[rate]);
        return (
          <div key={rate} className={styles.rate}>
            <label className={form.check}>
              <input
                type="checkbox"
                checked={choice.rates.includes(rate)}
                aria-describedby={`${id}-${rate}`}
                onChange={() => onChange(toggleRate(choice, rate))}
              />
              {label}
            </label>
            <p id={`${id}-${rate}`}>
              {tells}
              {tooFew ? <b> {tooFew}</b> : null}
              {judged ? ` ${judged}` : null}
            </p>
          </div>
        );
      })}
      {problem ? (
        <p className={form.error} id={`${id}-problem`}>
          {problem}
        </p>
      ) : null}
    </fieldset>
  );
}

/** Which rates, how often an alert may be false, and quiet or not. */
export function ChoiceFields(props: ChoiceFieldsProps) {
  const { choice, onChange } = props;
  const id = useId();
  const shares = SHARES.includes(choice.alpha) ? SHARES : [...SHARES, choice.alpha].sort((a, b) => b - a);
  return (
    <>
      <RateFields {...props} />
      <Field label="False alerts" hint={falseAlarmWords(choice.alpha)}>
        {(control) => (
          <select
            {...control}
            value={String(choice.alpha)}
            onChange={(event) => onChange({ ...choice, alpha: Number(event.target.value) })}
          >
            {shares.map((share) => (
              <option key={share} value={String(share)}>
                About {matchesIn(share)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <p className={styles.quiet}>
        The more rates share this, and the rarer false alerts are, the more it takes for a true one.
      </p>
      <div className={styles.rate}>
        <label className={form.check}>
          <input
            type="checkbox"
            checked={choice.quiet}
            aria-describedby={`${id}-quiet`}
            onChange={(event) => onChange({ ...choice, quiet: event.target.checked })}
          />
          Quiet
        </label>
        <p id={`${id}-quiet`}>
          Takes more evidence where little is known of what is usual for a player: fewer false alerts, and
          some true ones come later or not at all. Off: the share above holds on average over all players.
        </p>
      </div>
    </>
  );
}
