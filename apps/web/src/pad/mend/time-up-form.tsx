import type { EntryBody } from "@courtloom/match-log";
import type { TimePolicy } from "@courtloom/tennis";
import { useState } from "react";
import { Choices } from "./choices.tsx";
import styles from "./mend.module.css";

interface Question<Key extends keyof TimePolicy> {
  readonly ask: string;
  readonly key: Key;
  readonly answers: readonly (readonly [label: string, value: NonNullable<TimePolicy[Key]>])[];
}

/** All that an event's rule has to say; nothing of it is assumed. */
const QUESTIONS: readonly (
  | Question<"unfinishedGame">
  | Question<"gamesCounted">
  | Question<"pointsDecide">
  | Question<"drawAllowed">
)[] = [
  {
    ask: "An unfinished game",
    key: "unfinishedGame",
    answers: [
      ["Does not count", "ignored"],
      ["The leader gets it", "leaderGetsIt"],
      ["With a lead of 2", "needsLeadOfTwo"],
      ["Level: 1 more point", "decidingPoint"],
    ],
  },
  {
    ask: "Sets level: which games count",
    key: "gamesCounted",
    answers: [
      ["Of the unfinished set", "set"],
      ["Of the whole match", "match"],
    ],
  },
  {
    ask: "Games level: points of the game that did not count",
    key: "pointsDecide",
    answers: [
      ["Decide", true],
      ["Do not decide", false],
    ],
  },
  {
    ask: "All level",
    key: "drawAllowed",
    answers: [
      ["A draw", true],
      ["1 more point", false],
    ],
  },
];

const isWhole = (policy: Partial<TimePolicy>): policy is TimePolicy =>
  QUESTIONS.every(({ key }) => policy[key] !== undefined);

interface TimeUpFormProps {
  readonly onWanted: (title: string, bodies: readonly EntryBody[]) => void;
}

/** Time was up: the event's rule is asked, nothing is assumed. */
export const TimeUpForm = ({ onWanted }: TimeUpFormProps) => {
  const [policy, setPolicy] = useState<Partial<TimePolicy>>({});
  const look = () => {
    if (isWhole(policy)) onWanted("Time was up", [{ kind: "MatchEnded", how: { type: "timeUp", policy } }]);
  };
  return (
    <section className={styles.part} aria-label="Time was up">
      <h3>Time was up</h3>
      <p>Take the event’s rule; the officials decide.</p>
      {QUESTIONS.map(({ ask, key, answers }) => (
        <div key={key} className={styles.part}>
          <p>{ask}</p>
          <Choices
            label={ask}
            choices={answers.map(([label, value]) => ({
              label,
              pressed: policy[key] === value,
              onPress: () => setPolicy((now) => ({ ...now, [key]: value })),
            }))}
          />
        </div>
      ))}
      <div className={styles.choices}>
        <button type="button" disabled={!isWhole(policy)} onClick={look}>
          {isWhole(policy) ? "Time was up: see what it makes" : "Answer all 4 to go on"}
        </button>
      </div>
    </section>
  );
};
