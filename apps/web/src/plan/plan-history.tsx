import type { PlanVersionRow } from "@courtloom/api";
import { ActionButton } from "../form/action-button.tsx";
import styles from "./plan.module.css";
import { planChanges } from "./plan-changes.ts";
import { NO_CONTENT } from "./plan-draft.ts";
import { sayWhen } from "./say-when.ts";

interface PlanHistoryProps {
  /** The newest first. */
  readonly versions: readonly PlanVersionRow[];
  readonly timeZone: string;
  readonly onTakeBack: (version: PlanVersionRow) => void;
}

const LONGEST_LIST = 12;

function Changes({
  before,
  after,
}: {
  readonly before: PlanVersionRow | undefined;
  readonly after: PlanVersionRow;
}) {
  const changes = planChanges(before ?? NO_CONTENT, after);
  const shown = changes.slice(0, LONGEST_LIST);
  return (
    <ul className={styles.changes}>
      {changes.length === 0 ? <li>Nothing changed.</li> : null}
      {shown.map((sentence) => (
        <li key={sentence}>{sentence}</li>
      ))}
      {changes.length > shown.length ? <li>And {changes.length - shown.length} more.</li> : null}
    </ul>
  );
}

/** Every version with who saved it, when, and what changed. */
export function PlanHistory({ versions, timeZone, onTakeBack }: PlanHistoryProps) {
  return (
    <section className={styles.section} aria-labelledby="versions">
      <h2 id="versions">Versions</h2>
      {versions.length === 0 ? <p>Not saved yet. Each time it is saved, a version is added here.</p> : null}
      <ol className={styles.versions}>
        {versions.map((version, at) => (
          <li key={version.version}>
            <h3>Version {version.version}</h3>
            <p className={styles.quiet}>
              {version.savedByName ?? "Somebody who has left"}, {sayWhen(version.savedMs, timeZone)}
            </p>
            {version.note === "" ? null : <p className="said">{version.note}</p>}
            <Changes before={versions[at + 1]} after={version} />
            {at === 0 ? null : (
              <ActionButton
                label="Take it back into the editor"
                about={`version ${version.version}`}
                onPress={() => onTakeBack(version)}
              />
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
