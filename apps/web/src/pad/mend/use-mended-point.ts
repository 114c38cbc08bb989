import type { Side } from "@courtloom/core";
import type { EntryBody, Point } from "@courtloom/match-log";
import { useReducer, useState } from "react";
import type { DraftEvent, DraftState } from "../draft-reducer.ts";
import { reduceDraft } from "../draft-reducer.ts";
import { usePadDevice } from "../feel/pad-device.ts";
import { finishPoint, pointNotSeen } from "../finish-point.ts";
import type { PointFrame } from "../point-draft.ts";
import { reopenPoint } from "../reopen-point.ts";
import type { useCharting } from "../use-charting.ts";
import type { Drag } from "../use-drag.ts";
import type { Mending } from "./mend-context.ts";
import { sayFact } from "./say-fact.ts";

const beginWith = (point: Point): DraftState => ({ draft: reopenPoint(point), past: [], redrawing: false });

/** What is of the match and not of the point has to wait. */
export const LATER = "Finish or leave this mending first.";

interface MendedPointOptions {
  readonly point: Point;
  readonly frame: PointFrame;
  readonly mending: Mending;
  /** The point as it is to be said from now on. */
  readonly onDone: (point: Point) => void;
}

/**
 * A charted point on the court again: everything that can be drawn and said of a point, and nothing of the match.
 * Done charts nothing; what it would change is confirmed first.
 */
export const useMendedPoint = (options: MendedPointOptions): ReturnType<typeof useCharting> => {
  const { point, frame, mending, onDone } = options;
  const [state, dispatch] = useReducer(reduceDraft, point, beginWith);
  const [message, say] = useState<string>();
  const { feel } = usePadDevice();
  const finished = finishPoint(state.draft, frame);
  const send = (event: DraftEvent): void => {
    say(undefined);
    dispatch(event);
  };
  const notSeen = (winner: Side): undefined => void onDone(pointNotSeen(winner, frame));
  const later = async (): Promise<void> => say(LATER);
  return {
    ...{ state, busy: false, message, say, before: undefined, send, notSeen, notSeenByKey: notSeen },
    drew: (drag: Drag) => {
      feel("tick");
      send({ type: "drew", ...drag, frame });
    },
    done: finished && sayFact(mending.names, { kind: "PointCharted", point: finished }),
    onDone: () => {
      if (finished) onDone(finished);
    },
    previewOf: () => "",
    canUndo: state.past.length > 0,
    undo: () => {
      if (state.past.length > 0) send({ type: "tookBack" });
    },
    chart: (_: EntryBody) => later(),
    changeLevel: later,
    replay: later,
    swapEnds: () => say(LATER),
  };
};
