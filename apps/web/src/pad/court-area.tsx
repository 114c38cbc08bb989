import type { ByPlayer, Side } from "@courtloom/core";
import type { Shot } from "@courtloom/match-log";
import { readStroke, type SeenPoint, type Stroke } from "@courtloom/tennis";
import { useMemo } from "react";
import styles from "./court.module.css";
import { CourtDrawing } from "./court-drawing.tsx";
import { makeCourtMap } from "./court-map.ts";
import { isSurelyOut } from "./drawn-shot.tsx";
import type { PointFrame } from "./point-draft.ts";
import { strikerAt } from "./read-draft.ts";
import { sayStroke } from "./say-stroke.ts";
import { Strip, type StripText } from "./strip.tsx";
import { type Drag, useDrag } from "./use-drag.ts";
import { type Size, useSize } from "./use-size.ts";

interface CourtAreaProps {
  readonly names: ByPlayer<string>;
  readonly frame: PointFrame;
  readonly shots: readonly Shot[];
  /** The shot being mended. */
  readonly opened: number | undefined;
  readonly redrawing: boolean;
  /** What the strip says while no finger draws. */
  readonly idle: StripText;
  /** A ball that is being drawn by keys. */
  readonly keyed: Drag | undefined;
  readonly onDrawn: (drag: Drag) => void;
}

/** The strip and the court under it. What a finger draws stays in here until it lifts, so only this is painted meanwhile. */
export const CourtArea = (props: CourtAreaProps) => {
  const { ref, size } = useSize<HTMLDivElement>();
  return (
    <div className={styles.court} ref={ref}>
      {size ? <SizedCourt {...props} size={size} /> : null}
    </div>
  );
};

/** Height of the strip, which lies over the top of the area. */
const STRIP_PX = 44;

const strikerOf = (props: CourtAreaProps, from: SeenPoint): Side => {
  const { redrawing, opened, shots, frame } = props;
  const mended = redrawing && opened !== undefined ? shots[opened] : undefined;
  return mended ? mended.striker : strikerAt(shots, from, frame);
};

/** All that the screen says of a ball while it is drawn, beside its thread. */
const readingOf = (stroke: Stroke | undefined): string => {
  const { lead, rest } = sayStroke(stroke);
  return `${lead} ${rest} ${stroke?.direction} ${isSurelyOut(stroke)} ${stroke !== undefined}`;
};

const SizedCourt = (props: CourtAreaProps & { readonly size: Size }) => {
  const { names, frame, shots, opened, idle, keyed, onDrawn, size } = props;
  const height = Math.max(80, size.height - STRIP_PX);
  const map = useMemo(() => makeCourtMap(frame.seat, size.width, height), [frame.seat, size.width, height]);
  const strokeOf = ({ from, to }: Drag) =>
    to && readStroke({ ...frame, striker: strikerOf(props, from), from, to });
  const { live, handlers, surface, brush } = useDrag({
    map,
    onDrawn,
    readingOf: (drag) => readingOf(strokeOf(drag)),
  });
  const striker = live && strikerOf(props, live.from);
  const stroke = live && strokeOf(live);
  const saying = sayStroke(stroke);
  const text: StripText = striker
    ? {
        lead: `${saying.lead}${saying.rest ? "," : ""}`,
        rest: saying.rest,
        aside: `${names[striker]}’s ball`,
      }
    : idle;
  return (
    <>
      <Strip text={text} look={striker !== undefined || keyed !== undefined} />
      <CourtDrawing
        map={map}
        names={names}
        frame={frame}
        shots={shots}
        top={opened ?? shots.length - 1}
        live={live ? { drag: live, stroke } : keyed && { drag: keyed, stroke: undefined }}
        surface={surface}
        brush={brush}
        // On the way of Tab, for keys draw here.
        handlers={{ tabIndex: 0, ...handlers }}
        width={size.width}
        height={height}
      />
    </>
  );
};
