import type { AlertLine } from "@courtloom/protocol";
import Link from "next/link";
import { memo, type ReactNode } from "react";
import { Mark } from "../loom/mark.tsx";
import { AlertActions } from "./alert-actions.tsx";
import { AlertDone } from "./alert-done.tsx";
import { alertHref, hrefWords } from "./alert-href.ts";
import { countSentence, intervalWords, restOfSentence, runWords } from "./alert-words.ts";
import styles from "./alerts.module.css";
import { isOpen, STATE_FLAGS, stateSentence, stateWord } from "./state-words.ts";
import { useAlert, useAlertsPlace } from "./use-alerts.ts";

/** "Court 2, Kaito L."; the name alone where the match is on no court. */
export const whereWords = ({ courtNo, name }: Pick<AlertLine, "courtNo" | "name">): string =>
  courtNo === null ? name : `Court ${courtNo}, ${name}`;

/** The sentence, count first, and what it stands on: interval, n, the run, the rule's version. */
export function AlertSentence({ line }: { readonly line: AlertLine }) {
  const run = runWords(line);
  return (
    <>
      <p className={styles.sentence} data-testid="alert-sentence">
        <b>{countSentence(line)},</b> {restOfSentence(line)}
      </p>
      <p className={styles.proof}>
        {run === null ? null : `${run}. `}
        {intervalWords(line.match)}, watch version {line.key.version}.
      </p>
    </>
  );
}

export interface AlertItemProps {
  readonly text: string;
  /** On the match's own page there is no way to it, and more below the sentence. */
  readonly onCourtPage?: boolean;
  readonly children?: ReactNode;
}

/** One alert in words: where and who, its state, the sentence, what was done about it, and what can be done. */
export const AlertItem = memo(function AlertItem({ text, onCourtPage = false, children }: AlertItemProps) {
  const { line, marks } = useAlert(text);
  const { timeZone } = useAlertsPlace();
  if (line === undefined) return null;
  const about = whereWords(line);
  return (
    <article
      className={styles.alert}
      data-testid="alert"
      data-state={line.state}
      data-open={isOpen(line) || undefined}
      data-snoozed={line.marks.snoozed !== undefined || undefined}
      aria-label={`${stateWord(line, timeZone)}: ${about}`}
    >
      <h3 className={styles.where}>
        <span className={styles.shape}>
          <Mark name={STATE_FLAGS[line.state][0]} />
        </span>
        <span>{about}</span>
      </h3>
      <p className={styles.state} data-testid="alert-state">
        <b>{stateWord(line, timeZone)}.</b> {stateSentence(line, timeZone)}
      </p>
      <AlertSentence line={line} />
      {line.bothOwn ? <p className={styles.both}>Both ours: speak to neither</p> : null}
      {onCourtPage ? null : (
        <Link className={styles.points} href={alertHref(line)} prefetch={false}>
          {hrefWords(line)}
          <span className="vh">, {about}</span>
        </Link>
      )}
      {children}
      <AlertDone line={line} marks={marks} />
      <AlertActions line={line} about={about} />
    </article>
  );
});
