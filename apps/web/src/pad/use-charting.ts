import { type ByPlayer, otherSide, type Side } from "@courtloom/core";
import {
  applyEntry,
  ENTRY_VERSION,
  type EntryBody,
  type LoggedEntry,
  type MatchView,
  type Point,
} from "@courtloom/match-log";
import { turnEnds } from "@courtloom/tennis";
import { useReducer, useRef, useState } from "react";
import { EMPTY_STATE, reduceDraft } from "./draft-reducer.ts";
import { finishPoint, pointNotSeen } from "./finish-point.ts";
import { lastUndoable } from "./last-undoable.ts";
import type { PadSession, PadSnapshot } from "./pad-session.ts";
import { isEmptyDraft, type PointFrame } from "./point-draft.ts";
import { sayNextScore } from "./say-score.ts";
import { tick } from "./tick.ts";

/** The score as it would be after a point; nothing is charted by asking. */
const scoreAfter = (view: MatchView, point: Point, epoch: number) => {
  const entry = {
    v: ENTRY_VERSION,
    id: "next",
    n: 1,
    atMs: 0,
    wallMs: 0,
    body: { kind: "PointCharted", point },
  } as const;
  const logged: LoggedEntry = { pos: view.pos + 1, laneId: "next", epoch, entry };
  return applyEntry(view, logged).score;
};

const takenBackWords = (fact: LoggedEntry, names: ByPlayer<string>): string => {
  const { body } = fact.entry;
  if (body.kind === "PointCharted") return `Taken back: point ${names[body.point.winner]}.`;
  if (body.kind === "PointReplayed") return "Taken back: replayed point.";
  if (body.kind === "EndsStated") return "Taken back: ends.";
  if (body.kind === "ServerStated") return "Taken back: server.";
  return "Taken back.";
};

/** A second touch within this after a point charted by one touch is the same finger bouncing, not the next point. */
const BOUNCE_MS = 400;

export interface ChartingOptions {
  readonly session: PadSession;
  readonly snapshot: PadSnapshot;
  readonly view: MatchView;
  readonly frame: PointFrame;
  readonly names: ByPlayer<string>;
}

/** What a chartist can do in a match, each as one call; the screen only draws. */
export const useCharting = ({ session, snapshot, view, frame, names }: ChartingOptions) => {
  const [state, send] = useReducer(reduceDraft, EMPTY_STATE);
  const [busy, setBusy] = useState(false);
  const [message, setMessage] = useState<string>();
  /** True from Done to the next touch: the changed number is the thing to look at. */
  const [justDone, setJustDone] = useState(false);
  const chartedAt = useRef(Number.NEGATIVE_INFINITY);

  const chart = async (...bodies: readonly EntryBody[]): Promise<void> => {
    setBusy(true);
    for (const body of bodies) await session.chart(body);
    setBusy(false);
  };
  const chartPoint = async (point: Point): Promise<void> => {
    if (busy) return;
    chartedAt.current = performance.now();
    tick();
    await chart({ kind: "PointCharted", point });
    send({ type: "cleared" });
    setMessage(undefined);
    setJustDone(true);
  };
  const preview = (point: Point): string =>
    sayNextScore(view.score, scoreAfter(view, point, snapshot.record.epoch), names);
  const finished = finishPoint(state.draft, frame);
  const undoable = lastUndoable(snapshot.log, new Set(view.setAside.map(({ id }) => id)));

  const undoFact = async (): Promise<void> => {
    if (!undoable) return;
    const viewed = view.points.find(({ id }) => id === undoable.entry.id);
    await chart({ kind: "EntryVoided", target: undoable.entry.id });
    if (viewed?.point.level === "every") send({ type: "reopened", point: viewed.point });
    setMessage(takenBackWords(undoable, names));
    setJustDone(false);
  };

  return {
    state,
    busy,
    message,
    before: justDone ? view.points.at(-1)?.before : undefined,
    send: (event: Parameters<typeof send>[0]) => {
      setMessage(undefined);
      setJustDone(false);
      send(event);
    },
    done: finished && preview(finished),
    onDone: () => void (finished && chartPoint(finished)),
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
    replay: async () => {
      await chart({ kind: "PointReplayed" });
      send({ type: "cleared" });
      setMessage("Point replayed. Nothing of it counts.");
    },
    swapEnds: (from: "now" | "lastChange") => {
      const endOfA = turnEnds(frame.endOfA);
      const since = view.points.find(({ before }) => before.changesOfEnds === view.score.changesOfEnds)?.id;
      void chart({ kind: "EndsStated", endOfA, ...(from === "lastChange" && since ? { since } : {}) });
      setMessage("Ends swapped.");
    },
    wrongServer: (slip: "players" | "chartist") => {
      void chart({ kind: "ServerStated", to: otherSide(frame.server), slip });
    },
  };
};
