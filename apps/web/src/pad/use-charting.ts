import type { ByPlayer, Side } from "@courtloom/core";
import type { EntryBody, MatchView, Point, ViewedPoint } from "@courtloom/match-log";
import { turnEnds } from "@courtloom/tennis";
import { useRef, useState } from "react";
import type { DraftEvent } from "./draft-reducer.ts";
import { firstPointToTurn } from "./ends-seen.ts";
import { usePadDevice } from "./feel/pad-device.ts";
import { finishPoint, pointNotSeen } from "./finish-point.ts";
import { lastUndoable } from "./last-undoable.ts";
import type { PadSession, PadSnapshot } from "./pad-session.ts";
import type { PadLevel } from "./pad-settings.ts";
import { isEmptyDraft, type PointFrame } from "./point-draft.ts";
import { sayNextScore } from "./say-score.ts";
import { sayTakenBack } from "./say-taken-back.ts";
import { scoreAfter } from "./score-after.ts";
import { neverUndone } from "./second/never-undone.ts";
import { momentOf, useDraft } from "./use-draft.ts";
import type { Drag } from "./use-drag.ts";

/** A second touch within this after a point charted by one touch is the same finger bouncing, not the next point. */
const BOUNCE_MS = 400;

export interface ChartingOptions {
  readonly session: PadSession;
  readonly snapshot: PadSnapshot;
  readonly view: MatchView;
  readonly frame: PointFrame;
  readonly names: ByPlayer<string>;
}

/** What is not a point: each is one entry and one sentence. */
const factsOf = (
  { view, frame, snapshot }: ChartingOptions,
  chart: (body: EntryBody) => Promise<void>,
  say: (message: string) => void,
) => ({
  swapEnds: (from: "now" | "lastChange") => {
    const since = from === "lastChange" ? firstPointToTurn(view, snapshot.log) : undefined;
    void chart({ kind: "EndsStated", endOfA: turnEnds(frame.endOfA), ...(since ? { since } : {}) });
    say("Ends swapped.");
  },
});

/** A drawn point comes back as a drawing where it would be charted again as it was: at its level, of its player. */
const comesBackDrawn = ({ point, subjects }: ViewedPoint, { snapshot, frame }: ChartingOptions): boolean =>
  point.level !== "score" &&
  point.level === snapshot.level &&
  (frame.subject === undefined || subjects.includes(frame.subject));

/** What a chartist can do in a match, each as one call; the screen only draws. */
export const useCharting = (options: ChartingOptions) => {
  const { session, snapshot, view, frame, names } = options;
  const [state, send] = useDraft(snapshot.record.laneId, momentOf(view, frame));
  const { feel } = usePadDevice();
  const [busy, setBusy] = useState(false);
  const [message, setMessage] = useState<string>();
  /** True from Done to the next touch: the changed number is the thing to look at. */
  const [justDone, setJustDone] = useState(false);
  const chartedAt = useRef(Number.NEGATIVE_INFINITY);

  const chart = async (body: EntryBody): Promise<void> => {
    setBusy(true);
    await session.chart(body);
    setBusy(false);
  };
  const chartPoint = async (point: Point): Promise<void> => {
    if (busy) return;
    chartedAt.current = performance.now();
    feel("done");
    await chart({ kind: "PointCharted", point });
    send({ type: "cleared" });
    setMessage(undefined);
    setJustDone(true);
  };
  const preview = (point: Point): string =>
    sayNextScore(view.score, scoreAfter(view, point, snapshot.epoch), names);
  const finished = finishPoint(state.draft, frame);
  const undoable = view.sealed
    ? undefined
    : lastUndoable(
        snapshot.log,
        new Set([...view.trail.refused.map(({ id }) => id), ...neverUndone(snapshot)]),
      );
  const undoFact = async (): Promise<void> => {
    if (!undoable) return;
    const { done, by } = undoable;
    const viewed = view.points.find(({ id }) => id === done.entry.id);
    await chart(by);
    if (done.entry.body.kind === "PointCharted" && viewed && comesBackDrawn(viewed, options))
      send({ type: "reopened", point: viewed.point });
    setMessage(sayTakenBack(undoable, names));
    setJustDone(false);
  };

  const draft = (event: DraftEvent): void => {
    setMessage(undefined);
    setJustDone(false);
    send(event);
  };

  return {
    state,
    busy,
    message,
    /** Shown in the strip until the next touch. */
    say: setMessage,
    before: justDone ? view.points.at(-1)?.before : undefined,
    send: draft,
    /** A ball that a finger or keys drew. */
    drew: (drag: Drag) => {
      feel("tick");
      draft({ type: "drew", ...drag, frame });
    },
    done: finished && preview(finished),
    onDone: () => void (finished && chartPoint(finished)),
    /** By a key: nothing bounces there, as a held key does nothing. */
    notSeenByKey: (winner: Side) => void chartPoint(pointNotSeen(winner, frame)),
    notSeen: (winner: Side) => {
      if (performance.now() - chartedAt.current < BOUNCE_MS) return;
      void chartPoint(pointNotSeen(winner, frame));
    },
    previewOf: (winner: Side) => preview(pointNotSeen(winner, frame)),
    canUndo: !isEmptyDraft(state.draft) || undoable !== undefined,
    undo: () => {
      if (isEmptyDraft(state.draft)) void undoFact();
      else send({ type: "tookBack" });
    },
    chart,
    /** At every ball both own players are charted again. */
    changeLevel: async (level: PadLevel) => {
      await chart({ kind: "LevelChanged", level });
      const { subjects } = view.opened;
      if (level === "every" && subjects.length > view.subjects.length)
        await chart({ kind: "SubjectsChanged", subjects });
    },
    replay: async () => {
      await chart({ kind: "PointReplayed" });
      send({ type: "cleared" });
      setMessage("Point replayed. Nothing of it counts.");
    },
    ...factsOf(options, chart, setMessage),
  };
};
