import { ActionButton } from "../form/action-button.tsx";
import type { DraftEdit } from "./edit-draft.ts";
import styles from "./plan.module.css";
import type { DraftRule } from "./plan-draft.ts";

interface RuleButtonsProps {
  readonly each: DraftRule;
  readonly about: string;
  readonly isOpen: boolean;
  readonly canMoveUp: boolean;
  readonly canMoveDown: boolean;
  readonly onOpen: () => void;
  readonly onEdit: (edit: DraftEdit) => void;
}

/** What can be done with a rule, by where it stands. */
export function RuleButtons(props: RuleButtonsProps) {
  const { each, about, isOpen, canMoveUp, canMoveDown, onOpen, onEdit } = props;
  const { id } = each.rule;
  const button = (label: string, onPress: () => void) => (
    <ActionButton label={label} about={about} onPress={onPress} />
  );
  const open = button(isOpen ? "Close" : "Change", onOpen);
  const buttons = {
    own: () => (
      <>
        {open}
        {canMoveUp ? button("Move up", () => onEdit({ kind: "move", id, by: -1 })) : null}
        {canMoveDown ? button("Move down", () => onEdit({ kind: "move", id, by: 1 })) : null}
        {button("Take out", () => onEdit({ kind: "takeOut", id }))}
      </>
    ),
    academy: () => (
      <>
        {button("Change for this player", () => {
          onEdit({ kind: "replace", id });
          onOpen();
        })}
        {button("Leave out", () => onEdit({ kind: "leaveOut", id }))}
      </>
    ),
    replaced: () => (
      <>
        {open}
        {button("As the academy's again", () => onEdit({ kind: "asAcademy", id }))}
      </>
    ),
    leftOut: () => button("Let it hold again", () => onEdit({ kind: "asAcademy", id })),
    unplaced: () => (
      <>
        {button("Make it an own rule", () => onEdit({ kind: "makeOwn", id }))}
        {button("Take out", () => onEdit({ kind: "takeOut", id }))}
      </>
    ),
  }[each.place];
  return <div className={styles.buttons}>{buttons()}</div>;
}
