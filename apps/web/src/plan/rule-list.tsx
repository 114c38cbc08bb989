import { useEffect, useRef, useState } from "react";
import { ActionButton } from "../form/action-button.tsx";
import type { DraftEdit } from "./edit-draft.ts";
import styles from "./plan.module.css";
import { holdingRules, type PlanDraft } from "./plan-draft.ts";
import { neverHeld, type RuleProblems } from "./plan-problems.ts";
import { RuleItem, ruleAnchor } from "./rule-item.tsx";

interface RuleListProps {
  readonly draft: PlanDraft;
  readonly isPlayers: boolean;
  readonly problems: RuleProblems;
  readonly drawnRuleId: string | undefined;
  readonly onEdit: (edit: DraftEdit) => void;
  readonly newId: () => string;
}

const MOVE_LABELS = { [-1]: "Move up", 1: "Move down" } as const;

/** After a move the same button is under the finger and the focus; at the end of the list the rule itself is. */
const useFocusAfterMove = (draft: PlanDraft) => {
  const moved = useRef<{ readonly id: string; readonly label: string } | undefined>(undefined);
  useEffect(() => {
    if (!moved.current || draft.rules.length === 0) return;
    const item = document.getElementById(ruleAnchor(moved.current.id));
    const { label } = moved.current;
    const again = [...(item?.querySelectorAll("button") ?? [])].find(
      ({ textContent }) => label !== "" && textContent?.startsWith(label),
    );
    (again ?? item)?.focus();
    moved.current = undefined;
  }, [draft]);
  return moved;
};

/** The rules in the order in which they hold. */
export function RuleList({ draft, isPlayers, problems, drawnRuleId, onEdit, newId }: RuleListProps) {
  const [open, setOpen] = useState<string | undefined>(undefined);
  const moved = useFocusAfterMove(draft);
  const [said, setSaid] = useState("");
  const holding = holdingRules(draft).map(({ rule }) => rule.id);
  const ownCount = draft.rules.filter(({ place }) => place === "own").length;
  const never = neverHeld(draft);
  const edit = (what: DraftEdit): void => {
    if (what.kind === "move") {
      moved.current = { id: what.id, label: MOVE_LABELS[what.by] };
      const at = draft.rules.findIndex(({ rule }) => rule.id === what.id) + what.by;
      setSaid(`Now rule ${at + 1} of ${ownCount}.`);
    }
    onEdit(what);
  };
  const add = (): void => {
    const id = newId();
    onEdit({ kind: "add", id });
    setOpen(id);
    moved.current = { id, label: "" };
  };
  return (
    <>
      <p className="vh" role="status">
        {said}
      </p>
      {draft.rules.length === 0 ? <p>No rule yet. Without rules every ball is open.</p> : null}
      <ol className={styles.rules}>
        {draft.rules.map((each, at) => {
          const { id } = each.rule;
          const no = holding.indexOf(id);
          return (
            <RuleItem
              key={id}
              each={each}
              no={no < 0 ? undefined : no + 1}
              isOpen={open === id}
              canMoveUp={each.place === "own" && at > 0}
              canMoveDown={each.place === "own" && at < ownCount - 1}
              isForDrawn={drawnRuleId === id}
              isNeverHeld={never.has(id)}
              problems={problems[id] ?? []}
              onOpen={() => setOpen(open === id ? undefined : id)}
              onEdit={edit}
            />
          );
        })}
      </ol>
      <ActionButton label={isPlayers ? "Add an own rule" : "Add a rule"} onPress={add} />
    </>
  );
}
