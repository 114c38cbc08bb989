import type { Ask, Shot } from "@courtloom/match-log";
import { choicesOf } from "./ask-choices.ts";
import styles from "./asks.module.css";
import type { DraftEvent } from "./draft-reducer.ts";
import type { PointFrame } from "./point-draft.ts";
import { Segment } from "./segment.tsx";

interface QuestionsProps {
  readonly shot: Shot;
  readonly place: number;
  readonly asks: readonly Ask[];
  readonly frame: PointFrame;
  readonly striker: string;
  readonly send: (event: DraftEvent) => void;
}

const CAPTIONS: Readonly<Record<Ask, string>> = {
  ballHeight: "Ball",
  ballTime: "Time",
  opponent: "Other",
  cameIn: "After",
  hesitated: "Mind",
};

const groupWords = (ask: Ask, striker: string): string => {
  const words: Readonly<Record<Ask, string>> = {
    ballHeight: `The ball that ${striker} answered`,
    ballTime: `The time that ${striker} had`,
    opponent: "Where the opponent was",
    cameIn: `What ${striker} did after it`,
    hesitated: `Did ${striker} change the mind?`,
  };
  return words[ask];
};

/** What is asked of one ball. Nothing is chosen beforehand, nothing has to be answered, and a second touch takes an answer back. */
export const Questions = ({ shot, place, asks, frame, striker, send }: QuestionsProps) =>
  asks.length === 0 ? null : (
    <fieldset
      className={styles.questions}
      aria-label={`Ball ${place + 1}, ${striker}`}
      data-testid="questions"
    >
      {asks.map((ask) => (
        <Segment
          key={ask}
          label={groupWords(ask, striker)}
          caption={CAPTIONS[ask]}
          choices={choicesOf(ask, shot, frame).map(({ label, hint, answer }) => ({
            id: label,
            label,
            ...(hint ? { hint } : {}),
            pressed: shot[ask] === answer.value,
            onPress: () => send({ type: "answered", place, answer }),
          }))}
        />
      ))}
    </fieldset>
  );
