import type { PlanContent, PlanVersionRow } from "@courtloom/api";
import { type RefObject, useEffect, useRef } from "react";
import { ActionButton } from "../form/action-button.tsx";
import { mergeContent } from "./merge-content.ts";
import styles from "./plan.module.css";
import { planChanges } from "./plan-changes.ts";
import { sayWhen } from "./say-when.ts";

export interface Conflict {
  /** The version that was changed here. */
  readonly base: PlanContent;
  /** What somebody else saved meanwhile. */
  readonly theirs: PlanVersionRow;
}

interface ConflictPanelProps {
  readonly conflict: Conflict;
  readonly mine: PlanContent;
  readonly timeZone: string;
  readonly onTogether: (content: PlanContent) => void;
  readonly onMine: () => void;
  readonly onTheirs: () => void;
}

function List({ heading, changes }: { readonly heading: string; readonly changes: readonly string[] }) {
  return (
    <div>
      <h3>{heading}</h3>
      <ul className={styles.changes}>
        {changes.length === 0 ? <li>Nothing changed.</li> : null}
        {changes.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </div>
  );
}

/** Takes the focus when it appears, so that nobody goes on without having met it. */
const useFocusAtFirst = (): RefObject<HTMLElement | null> => {
  const ref = useRef<HTMLElement>(null);
  useEffect(() => {
    ref.current?.focus();
    ref.current?.scrollIntoView({ block: "start" });
  }, []);
  return ref;
};

/** Somebody saved meanwhile: what they changed, what was changed here, and what to do. */
export function ConflictPanel(props: ConflictPanelProps) {
  const { conflict, mine, timeZone, onTogether, onMine, onTheirs } = props;
  const ref = useFocusAtFirst();
  const { base, theirs } = conflict;
  const merged = mergeContent({ base, theirs, mine });
  const who = theirs.savedByName ?? "Somebody";
  return (
    <section ref={ref} className={styles.conflict} aria-labelledby="conflict" tabIndex={-1}>
      <h2 id="conflict">Saved by somebody else meanwhile</h2>
      <p>
        {who} saved version {theirs.version} on {sayWhen(theirs.savedMs, timeZone)}, while you were changing
        the one before. Nothing was written over, and your changes are still on this page.
      </p>
      <div className={styles.two}>
        <List heading={`${who}'s changes`} changes={planChanges(base, theirs)} />
        <List heading="Your changes" changes={planChanges(base, mine)} />
      </div>
      {merged.both.length > 0 ? (
        <p>Changed by both: {merged.both.join("; ")}. Put together, yours stands there.</p>
      ) : null}
      <div className={styles.buttons}>
        <ActionButton primary label="Put both together" onPress={() => onTogether(merged.content)} />
        <ActionButton label="Save mine as the next version" onPress={onMine} />
        <ActionButton label="Drop mine and go on with theirs" onPress={onTheirs} />
      </div>
    </section>
  );
}
