import type { Judgement } from "@courtloom/decisions";
import { ActionButton } from "../form/action-button.tsx";
import plan from "./plan.module.css";
import type { DraftRule } from "./plan-draft.ts";
import type { TriedBall } from "./tried-ball.ts";
import styles from "./try.module.css";
import { TryAnswers, TryPlaces } from "./try-choices.tsx";
import { TryCourt } from "./try-court.tsx";
import { understood, VerdictPanel } from "./verdict-panel.tsx";

export interface TryItProps {
  readonly rules: readonly DraftRule[];
  readonly ball: TriedBall | undefined;
  readonly judgement: Judgement | undefined;
  readonly onBall: (ball: TriedBall | undefined) => void;
}

/** Draws a ball on a court and shows what the plan, saved or not, says of it. */
export function TryIt({ rules, ball, judgement, onBall }: TryItProps) {
  const name = ball ? `Court with a ball. ${understood(ball)}` : "Court. No ball is drawn.";
  return (
    <section className={styles.panel} id="try" aria-labelledby="try-heading" tabIndex={-1}>
      <h2 id="try-heading">Try it</h2>
      <p className={plan.quiet}>
        Drag from where the player strikes to where the ball goes; touch for a ball that is kept.
      </p>
      <div className={styles.pair}>
        <TryCourt ball={ball} name={name} onDrawn={(path) => onBall({ ...ball, to: undefined, ...path })} />
        <VerdictPanel ball={ball} judgement={judgement} rules={rules} />
        <TryAnswers ball={ball} onBall={onBall} />
      </div>
      <TryPlaces ball={ball} onBall={onBall} />
      {ball ? (
        <div>
          <ActionButton label="Take the ball away" onPress={() => onBall(undefined)} />
        </div>
      ) : null}
    </section>
  );
}
