import type { DraftEdit } from "./edit-draft.ts";
import { AIM_LABELS, AIM_MEANS, lineOnSentence, ruleHeading, targetSentence } from "./facet-words.ts";
import styles from "./plan.module.css";
import { type DraftRule, plainRule, type RulePlace } from "./plan-draft.ts";
import { RuleButtons } from "./rule-buttons.tsx";
import { RuleForm } from "./rule-form.tsx";

export interface RuleItemProps {
  readonly each: DraftRule;
  /** Its place among the rules that hold, from 1; undefined where it does not hold. */
  readonly no: number | undefined;
  readonly isOpen: boolean;
  readonly canMoveUp: boolean;
  readonly canMoveDown: boolean;
  /** The ball that was drawn to try the plan is one of this rule's. */
  readonly isForDrawn: boolean;
  readonly isNeverHeld: boolean;
  readonly problems: readonly string[];
  readonly onOpen: () => void;
  readonly onEdit: (edit: DraftEdit) => void;
}

const PLACE_WORDS: Readonly<Record<RulePlace, string | undefined>> = {
  own: undefined,
  academy: "As in the academy's plan",
  replaced: "Changed for this player",
  leftOut: "Left out for this player",
  unplaced: "Does not hold: the academy's rule that it replaced is gone",
};

export const ruleAnchor = (id: string): string => `rule-${id}`;

function RuleSummary({ each: { rule, words } }: Pick<RuleItemProps, "each">) {
  const { aim, targets, lineOn } = plainRule(rule);
  return (
    <>
      {words.trim() === "" ? null : <p className={`said ${styles.words}`}>{words}</p>}
      <p>
        <b>{AIM_LABELS[aim]}.</b> {aim === "keep" ? lineOnSentence({ lineOn }) : AIM_MEANS[aim]}
      </p>
      {targets.map((target) => (
        <p key={`${target.choice} ${target.wants}`}>{targetSentence(target)}.</p>
      ))}
    </>
  );
}

/** One rule of the plan: what it says, and when opened everything of it to be changed. */
export function RuleItem(props: RuleItemProps) {
  const { each, no, isOpen, isForDrawn, isNeverHeld, problems, onOpen, onEdit, ...moves } = props;
  const { rule, words, place } = each;
  const about = no === undefined ? `of ${ruleHeading(rule)}` : `of rule ${no}`;
  const isOpened = isOpen && (place === "own" || place === "replaced");
  return (
    <li
      id={ruleAnchor(rule.id)}
      className={styles.rule}
      data-place={place}
      data-drawn={isForDrawn}
      tabIndex={-1}
    >
      <h3>
        {no === undefined ? null : <span className={styles.no}>{no}</span>} {ruleHeading(rule)}
      </h3>
      {PLACE_WORDS[place] ? <p className={styles.quiet}>{PLACE_WORDS[place]}</p> : null}
      {isForDrawn ? <p className={styles.drawn}>Holds for the ball drawn</p> : null}
      {problems.map((sentence) => (
        <p key={sentence} className={styles.problem}>
          {sentence}
        </p>
      ))}
      {isNeverHeld && problems.length === 0 ? (
        <p className={styles.quiet}>Rules before it take all its balls, so it does not hold.</p>
      ) : null}
      {isOpened ? (
        <RuleForm
          rule={rule}
          words={words}
          about={about}
          onRule={(next) => onEdit({ kind: "rule", id: rule.id, rule: next })}
          onWords={(next) => onEdit({ kind: "ruleWords", id: rule.id, words: next })}
        />
      ) : (
        <RuleSummary each={each} />
      )}
      <RuleButtons {...{ each, about, onOpen, onEdit }} {...moves} isOpen={isOpened} />
    </li>
  );
}
