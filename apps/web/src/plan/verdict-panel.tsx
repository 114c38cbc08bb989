import type { Judgement } from "@courtloom/decisions";
import { CHOICE_LABELS, facetsSentence, ruleHeading } from "./facet-words.ts";
import type { DraftRule } from "./plan-draft.ts";
import { ruleAnchor } from "./rule-item.tsx";
import { ballToJudge, depthOf, sideOf, type TriedBall } from "./tried-ball.ts";
import styles from "./try.module.css";
import { VERDICT_WORDS, whySentence } from "./verdict-words.ts";

interface VerdictPanelProps {
  readonly ball: TriedBall | undefined;
  readonly judgement: Judgement | undefined;
  /** The rules that hold, in their order. */
  readonly rules: readonly DraftRule[];
}

/** "Struck behind the baseline, from the left. Down the line." */
export const understood = (ball: TriedBall): string => {
  const { choice } = ballToJudge(ball);
  const place = facetsSentence({ depth: [depthOf(ball)], side: [sideOf(ball)] });
  return `Struck ${place}. ${choice ? CHOICE_LABELS[choice] : "No direction"}.`;
};

/** What the plan says of the ball drawn, and why. */
export function VerdictPanel({ ball, judgement, rules }: VerdictPanelProps) {
  const at = rules.findIndex(({ rule }) => rule.id === judgement?.ruleId);
  const found = rules[at];
  return (
    <div className={styles.verdict} role="status" data-testid="verdict" data-verdict={judgement?.verdict}>
      {ball && judgement ? (
        <>
          <p className={styles.strip}>{understood(ball)}</p>
          <p className={styles.said}>{VERDICT_WORDS[judgement.verdict]}</p>
          <p>{whySentence(judgement, found?.rule)}</p>
          {found ? (
            <p>
              <a className={styles.rule} href={`#${ruleAnchor(found.rule.id)}`}>
                Rule {at + 1}: {ruleHeading(found.rule)}
              </a>
              {found.words.trim() === "" ? null : <span className="said">{found.words}</span>}
            </p>
          ) : null}
        </>
      ) : (
        <p>Draw a ball from the near end, or choose its places below.</p>
      )}
    </div>
  );
}
