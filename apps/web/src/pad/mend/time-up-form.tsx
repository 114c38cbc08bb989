import type { EntryBody } from "@courtloom/match-log";
import type { TimePolicy } from "@courtloom/tennis";
import { useState } from "react";
import { Choices } from "./choices.tsx";
import styles from "./mend.module.css";

type Rule = TimePolicy["unfinishedGame"];

const RULE_WORDS: Readonly<Record<Rule, string>> = {
  ignored: "An unfinished game does not count",
  leaderGetsIt: "The leader gets it",
  needsLeadOfTwo: "The leader gets it with a lead of two",
  decidingPoint: "The leader gets it; level, one more point decides",
};

const RULES = Object.keys(RULE_WORDS) as readonly Rule[];

interface TimeUpFormProps {
  readonly onWanted: (title: string, bodies: readonly EntryBody[]) => void;
}

/** Time was up: the event's rule is asked, nothing is assumed. */
export const TimeUpForm = ({ onWanted }: TimeUpFormProps) => {
  const [isDrawAllowed, setDrawAllowed] = useState<boolean>();
  const ended = (unfinishedGame: Rule, drawAllowed: boolean): EntryBody => ({
    kind: "MatchEnded",
    how: { type: "timeUp", policy: { unfinishedGame, drawAllowed } },
  });
  return (
    <section className={styles.part} aria-label="Time was up">
      <h3>Time was up</h3>
      <p>Take the event’s rule; the officials decide.</p>
      <Choices
        label="Is a draw possible?"
        choices={[
          {
            label: "A draw is possible",
            pressed: isDrawAllowed === true,
            onPress: () => setDrawAllowed(true),
          },
          { label: "No draw", pressed: isDrawAllowed === false, onPress: () => setDrawAllowed(false) },
        ]}
      />
      {isDrawAllowed !== undefined && (
        <Choices
          label="An unfinished game"
          choices={RULES.map((rule) => ({
            label: RULE_WORDS[rule],
            onPress: () => onWanted(`Time was up. ${RULE_WORDS[rule]}`, [ended(rule, isDrawAllowed)]),
          }))}
        />
      )}
    </section>
  );
};
