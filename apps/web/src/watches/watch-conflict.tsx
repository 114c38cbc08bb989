import type { WatchChoice, WatchSettingRow } from "@courtloom/api";
import { useEffect, useRef } from "react";
import { ActionButton } from "../form/action-button.tsx";
import { sayWhen } from "../plan/say-when.ts";
import { choiceWords } from "./watch-words.ts";
import styles from "./watches.module.css";

interface WatchConflictProps {
  /** What somebody else saved meanwhile. */
  readonly theirs: WatchSettingRow;
  readonly mine: WatchChoice | null;
  readonly timeZone: string;
  readonly onMine: () => void;
  readonly onTheirs: () => void;
}

const words = (choice: WatchChoice | null): string => (choice ? choiceWords(choice) : "As the academy's.");

/** Somebody saved meanwhile: both choices, and what to do. Takes the focus when it appears. */
export function WatchConflict({ theirs, mine, timeZone, onMine, onTheirs }: WatchConflictProps) {
  const ref = useRef<HTMLElement>(null);
  useEffect(() => ref.current?.focus(), []);
  const who = theirs.savedByName ?? "Somebody";
  return (
    <section ref={ref} className={styles.conflict} aria-labelledby="conflict" tabIndex={-1}>
      <h2 id="conflict">Saved by somebody else meanwhile</h2>
      <p>
        {who} saved version {theirs.version} on {sayWhen(theirs.savedMs, timeZone)}. Nothing was written over.
      </p>
      <dl className={styles.both}>
        <dt>Saved by {who}</dt>
        <dd>{words(theirs.choice)}</dd>
        <dt>Chosen here</dt>
        <dd>{words(mine)}</dd>
      </dl>
      <div className={styles.buttons}>
        <ActionButton primary label="Save mine as the next version" onPress={onMine} />
        <ActionButton label="Drop mine and go on with theirs" onPress={onTheirs} />
      </div>
    </section>
  );
}
