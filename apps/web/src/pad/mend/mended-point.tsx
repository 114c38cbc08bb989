import type { EntryBody, ViewedPoint } from "@courtloom/match-log";
import { useEffect, useState } from "react";
import asks from "../asks.module.css";
import type { ChartingProps } from "../charting.tsx";
import { DrawnPoint } from "../drawn-point.tsx";
import { KeyMapSheet } from "../keys/key-map-sheet.tsx";
import { usePadKeys } from "../keys/use-pad-keys.ts";
import { sayIdle } from "../say-idle.ts";
import type { useCharting } from "../use-charting.ts";
import { ConfirmChange } from "./confirm-change.tsx";
import styles from "./mend.module.css";
import type { Mending } from "./mend-context.ts";
import { pointMended } from "./mend-point.ts";
import { MendSheet } from "./mend-sheet.tsx";
import type { MendedFrame } from "./mended-frame.ts";
import { sayPlace } from "./say-place.ts";
import { LATER, useMendedPoint } from "./use-mended-point.ts";

interface MendedPointProps {
  readonly props: ChartingProps;
  readonly mending: Mending;
  readonly viewed: ViewedPoint;
  readonly mended: MendedFrame;
  readonly onClose: () => void;
}

interface BarProps {
  readonly charting: ReturnType<typeof useCharting>;
  readonly hand: ChartingProps["settings"]["hand"];
  readonly onLeave: () => void;
}

/** The bottom row: a step back, leave the point as it was, on to what it changes. */
const MendBar = ({ charting, hand, onLeave }: BarProps) => {
  const row = [
    <button
      key="undo"
      type="button"
      disabled={!charting.canUndo}
      onClick={charting.undo}
      data-testid="mend-undo"
    >
      Undo
    </button>,
    <button key="leave" type="button" onClick={onLeave}>
      Leave it
    </button>,
    <button
      key="done"
      type="button"
      className={asks.done}
      disabled={charting.done === undefined}
      onClick={charting.onDone}
      data-testid="mend-done"
    >
      <b>Done</b>
      <span>{charting.done ?? "when it is said who won"}</span>
    </button>,
  ];
  return (
    <div className={asks.go} data-has-done="true" data-hand={hand}>
      {hand === "left" ? row.toReversed() : row}
    </div>
  );
};

/** The pad as it was at that point, for its keys and its words. */
const propsThen = (
  props: ChartingProps,
  { before }: ViewedPoint,
  { frame, level }: MendedFrame,
): ChartingProps => ({
  ...props,
  frame,
  view: { ...props.view, score: before, points: [] },
  snapshot: { ...props.snapshot, level },
});

/** A charted point on the court again, to be mended in its drawing. What that changes is confirmed before it is written. */
export const MendedPoint = ({ props, mending, viewed, mended, onClose }: MendedPointProps) => {
  const { frame } = mended;
  const { names } = mending;
  const [wanted, setWanted] = useState<readonly EntryBody[]>();
  const then = propsThen(props, viewed, mended);
  const charting = useMendedPoint({
    ...{ point: viewed.point, frame, mending },
    onDone: (point) => setWanted([pointMended({ id: viewed.id }, point)]),
  });
  const { more, onMore } = props;
  const { say } = charting;
  useEffect(() => {
    // More is about the match, and the match waits while a point is mended.
    if (!more) return;
    onMore(false);
    say(LATER);
  }, [more, onMore, say]);
  const keys = usePadKeys({
    charting,
    props: then,
    onLevel: () => say(LATER),
    onOtherCourt: undefined,
  });
  const { draft, opened, redrawing } = charting.state;
  const idle = sayIdle({
    ...{ view: then.view, draft, frame, names, seat: props.settings.seat, opened, redrawing },
    ...{ secondsLeft: undefined, asksServe: true, message: charting.message },
  });
  const title = `Mending ${sayPlace(viewed.before, names)}`;
  return (
    <>
      <h2 className={styles.frame} data-testid="mending">
        {title}, {names[frame.server]} serving
      </h2>
      <DrawnPoint charting={charting} props={then} idle={keys.ball.text ?? idle} keyed={keys.ball.drag} />
      <MendBar charting={charting} hand={props.settings.hand} onLeave={onClose} />
      {keys.isMapOpen && (
        <KeyMapSheet names={names} seat={frame.seat} draws={keys.draws} onClose={() => keys.showMap(false)} />
      )}
      {wanted && (
        <MendSheet title={title} onClose={() => setWanted(undefined)}>
          <ConfirmChange
            {...{ mending, bodies: wanted }}
            title={charting.done ?? "Not seen: keep who won"}
            onDone={onClose}
            onBack={() => setWanted(undefined)}
          />
        </MendSheet>
      )}
    </>
  );
};
