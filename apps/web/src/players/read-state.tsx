import type { ReactNode } from "react";
import { readProblem } from "../client/read-problem.ts";
import { ActionButton } from "../form/action-button.tsx";
import { ProblemNote } from "../form/problem-note.tsx";
import styles from "./players.module.css";
import { useSecondsWaiting } from "./use-seconds-waiting.ts";

/** What is read from the server, as far as it came. */
export interface Reading<T> {
  readonly data: T | undefined;
  readonly error: unknown;
  readonly isFetching: boolean;
  /** What is shown was asked for otherwise, and the answer to this question is on its way. */
  readonly isPlaceholderData: boolean;
  readonly refetch: () => unknown;
}

interface ReadStateProps<T> {
  /** What is being read, within a sentence: "the figures of Noor V.". */
  readonly what: string;
  readonly reading: Reading<T>;
  readonly children: (data: T) => ReactNode;
}

/** Waiting is said once it takes more than a second, with the seconds so far. SPEC PF10. */
function Waiting({ what, isWaiting }: { readonly what: string; readonly isWaiting: boolean }) {
  const seconds = useSecondsWaiting(isWaiting);
  const isLong = isWaiting && seconds >= 1;
  return (
    <>
      <span className="vh" role="status">
        {isLong ? `Counting ${what}.` : ""}
      </span>
      {isLong ? (
        <p className={styles.wait} aria-hidden="true" data-testid="waiting">
          Counting {what}. {seconds} s so far.
        </p>
      ) : null}
    </>
  );
}

/** Shows what was read, and what is the matter while it was not: waiting, refused, or no connection. SPEC PF10. */
export function ReadState<T>({ what, reading, children }: ReadStateProps<T>) {
  const { data, error, isFetching, isPlaceholderData, refetch } = reading;
  const problem = error ? readProblem(error) : undefined;
  return (
    <div aria-busy={isFetching} className={styles.read}>
      <Waiting what={what} isWaiting={isFetching && (data === undefined || isPlaceholderData)} />
      {problem && !isFetching ? (
        <div className={styles.state}>
          <ProblemNote sentence={problem.sentence} />
          {data === undefined ? null : <p>Below is what was read before.</p>}
          <ActionButton label="Try again" onPress={() => void refetch()} />
        </div>
      ) : null}
      {data === undefined ? null : (
        <div data-stale={isPlaceholderData || undefined} className={styles.read}>
          {children(data)}
        </div>
      )}
    </div>
  );
}
