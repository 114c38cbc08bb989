import type { ByPlayer, Side } from "@courtloom/core";
import { useState } from "react";
import styles from "./pad.module.css";
import { Segment } from "./segment.tsx";
import { SEAT_CHOICES, type SeatChoice } from "./shown-ends.ts";
import { SubjectChoice } from "./subject-choice.tsx";

export interface StartAnswers {
  readonly firstServer?: Side;
  readonly atFirstEnd?: Side;
  readonly subject?: Side;
}

interface StartSheetProps {
  readonly names: ByPlayer<string>;
  readonly seat: SeatChoice;
  /** Asked only before the first point. */
  readonly asksServer: boolean;
  readonly asksEnds: boolean;
  /** Key balls with both players charted: whose. */
  readonly asksSubject: boolean;
  readonly onSeat: (seat: SeatChoice) => void;
  readonly onStart: (answers: StartAnswers) => void;
}

export const SEAT_LABELS: Readonly<Record<SeatChoice, string>> = {
  behind: "Behind an end",
  side: "At the side",
  alwaysNear: "Player always near",
};

/** What the pad must know before a ball can be drawn: who serves and who is where. Nothing is chosen beforehand. */
export const StartSheet = (props: StartSheetProps) => {
  const { names, seat, asksServer, asksEnds, asksSubject, onSeat, onStart } = props;
  const [firstServer, setFirstServer] = useState<Side>();
  const [atFirstEnd, setAtFirstEnd] = useState<Side>();
  const [subject, setSubject] = useState<Side>();
  const ready = (!asksServer || firstServer) && (!asksEnds || atFirstEnd) && (!asksSubject || subject);
  const sides = (chosen: Side | undefined, choose: (side: Side) => void) =>
    (["A", "B"] as const).map((side) => ({
      id: side,
      label: names[side],
      pressed: chosen === side,
      onPress: () => choose(side),
    }));
  const start = () =>
    onStart({
      ...(firstServer ? { firstServer } : {}),
      ...(asksEnds && atFirstEnd ? { atFirstEnd } : {}),
      ...(asksSubject && subject ? { subject } : {}),
    });
  return (
    <section className={styles.sheet} aria-label="Before you chart">
      <h2>Where do you sit?</h2>
      <Segment
        label="Where do you sit?"
        choices={SEAT_CHOICES.map((choice) => ({
          id: choice,
          label: SEAT_LABELS[choice],
          pressed: choice === seat,
          onPress: () => onSeat(choice),
        }))}
      />
      {asksServer && (
        <>
          <h2>Who serves first?</h2>
          <Segment label="Who serves first?" choices={sides(firstServer, setFirstServer)} />
        </>
      )}
      {asksEnds && (
        <>
          <h2>{seat === "side" ? "Who is on the left?" : "Who is at the near end?"}</h2>
          <Segment label="Who is at the near or left end?" choices={sides(atFirstEnd, setAtFirstEnd)} />
        </>
      )}
      {asksSubject && (
        <>
          <h2>Whose balls do you chart?</h2>
          <SubjectChoice names={names} chosen={subject} onChoose={setSubject} />
        </>
      )}
      <button type="button" className={styles.primary} disabled={!ready} onClick={start} data-testid="start">
        {ready ? "Start charting" : "Answer to start"}
      </button>
    </section>
  );
};
