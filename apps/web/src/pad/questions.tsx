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
  readonly opponent: string;
  readonly send: (event: DraftEvent) => void;
}

/** Beside the choices, as short as a small phone has room for; and whole, for screen readers. */
const wordsOf = (ask: Ask, striker: string, opponent: string): { caption: string; label: string } => {
  switch (ask) {
    case "ballHeight":
      return { caption: "Ball", label: `The ball that ${striker} answered` };
    case "ballTime":
      return { caption: "Time", label: `The time that ${striker} had` };
    case "opponent":
      return { caption: opponent, label: `Where ${opponent} was` };
    case "cameIn":
      return { caption: "After", label: `What ${striker} did after it` };
    case "hesitated":
      return { caption: "Mind", label: `Did ${striker} change the mind?` };
  }
};

/** What is asked of one ball. Nothing is chosen beforehand, nothing has to be answered, and a second touch takes an answer back. */
export const Questions = ({ shot, place, asks, frame, striker, opponent, send }: QuestionsProps) =>
  asks.length === 0 ? null : (
    <fieldset
      className={styles.questions}
      aria-label={`Ball ${place + 1}, ${striker}`}
      data-testid="questions"
    >
      {asks.map((ask) => (
        <Segment
          key={ask}
          {...wordsOf(ask, striker, opponent)}
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
