import type { Rate } from "@courtloom/match-log";
import { RATE_NAMES } from "../../../alerts/rate-names.ts";
import type { RunAttempt } from "./attempt-run.ts";
import styles from "./court-alerts.module.css";

/** The attempts as beads: those counted are filled, the run stands on a line. Decoration beside the list. */
export function AttemptBeads({ attempts }: { readonly attempts: readonly RunAttempt[] }) {
  return (
    <p className={styles.beads} aria-hidden="true">
      {attempts.map(({ key, isHit, isInRun }) => (
        <i key={key} data-hit={isHit || undefined} data-run={isInRun || undefined} />
      ))}
    </p>
  );
}

const planWords = (rate: Rate, { offPlan }: RunAttempt): string => {
  if (offPlan === undefined || RATE_NAMES[rate].saysPlan) return "";
  return offPlan ? ", off plan" : ", on plan";
};

/** Every attempt in words, each with the way to its point in the log. */
export function AttemptList({
  rate,
  attempts,
}: {
  readonly rate: Rate;
  readonly attempts: readonly RunAttempt[];
}) {
  const names = RATE_NAMES[rate];
  return (
    <ol className={styles.attempts} data-testid="attempts">
      {attempts.map((attempt) => (
        <li key={attempt.key} data-run={attempt.isInRun || undefined}>
          <a href={`#entry-${attempt.pos}`}>{attempt.score}</a>
          <span>
            <b>{attempt.isHit ? names.hit : names.other}</b>
            {planWords(rate, attempt)}
          </span>
        </li>
      ))}
    </ol>
  );
}
