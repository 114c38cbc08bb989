import { type ByPlayer, otherSide, type Side } from "@courtloom/core";
import styles from "./asks.module.css";
import type { DraftEvent } from "./draft-reducer.ts";
import { type Ending, isServeIn, type PointDraft } from "./point-draft.ts";
import { Segment } from "./segment.tsx";

interface KeyRowProps {
  readonly names: ByPlayer<string>;
  /** Whose last shot may have gone undrawn; `undefined` when the last one is on the court. */
  readonly undrawn: Side | undefined;
  readonly draft: PointDraft;
  readonly ending: Ending | undefined;
  readonly send: (event: DraftEvent) => void;
}

/** Key balls: a last shot that nobody drew, in one touch, and the counter of chances that were not taken. */
export const KeyRow = ({ names, undrawn, draft, ending, send }: KeyRowProps) => {
  const inPlay = draft.shots.length > 0 || isServeIn(draft);
  if (!inPlay) return null;
  const choice = (striker: Side, winner: Side) => ({
    pressed: ending?.type === "undrawn" && ending.winner === winner,
    hint: `${names[striker]}${striker === winner ? ": winner" : " missed"}`,
    onPress: () => send({ type: "endingChosen", ending: { type: "undrawn", winner }, chosen: ending }),
  });
  const count = draft.satUpKept ?? 0;
  return (
    <div className={styles.keyRow}>
      {undrawn && (
        <Segment
          label={`How ${names[undrawn]}’s last shot, not drawn, ended the point`}
          caption={names[undrawn]}
          choices={[
            { id: "winner", label: "Winner", action: "undrawnWinner", ...choice(undrawn, undrawn) },
            {
              id: "missed",
              label: "Missed",
              action: "undrawnMissed",
              ...choice(undrawn, otherSide(undrawn)),
            },
          ]}
        />
      )}
      <Segment
        label="Sat up, kept"
        choices={[
          ...(count > 0
            ? [
                {
                  id: "less",
                  label: "−",
                  hint: "One less sat up",
                  action: "satUpLess" as const,
                  onPress: () => send({ type: "satUp", by: -1 }),
                },
              ]
            : []),
          {
            id: "more",
            action: "satUp",
            label: (
              <>
                Sat up, kept <b data-testid="sat-up">{count > 0 ? count : ""}</b>
              </>
            ),
            onPress: () => send({ type: "satUp", by: 1 }),
          },
        ]}
      />
    </div>
  );
};
