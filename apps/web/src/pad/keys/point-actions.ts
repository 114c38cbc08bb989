import { otherSide } from "@courtloom/core";
import { type Miss, SHOT_KINDS, type Shot } from "@courtloom/match-log";
import type { DraftEvent, DraftState } from "../draft-reducer.ts";
import { type Ending, isServeIn, type PointFrame } from "../point-draft.ts";
import { endingOf, nextStriker } from "../read-draft.ts";
import type { PadActions } from "./use-keys.ts";

export interface PointFacts {
  readonly state: DraftState;
  readonly frame: PointFrame;
  readonly send: (event: DraftEvent) => void;
}

const serveActions = ({ state, send }: PointFacts): PadActions => {
  const { faults, shots } = state.draft;
  const serve = (outcome: "in" | "fault" | "ace" | "doubleFault") => () => send({ type: "served", outcome });
  return {
    serveIn: serve("in"),
    serveLet: () => send({ type: "serveLet" }),
    ...(faults === 0 ? { fault: serve("fault") } : {}),
    ...(shots.length === 0 ? { ace: serve("ace") } : {}),
    ...(shots.length === 0 && faults === 1 ? { fault: serve("doubleFault") } : {}),
  };
};

const endingActions = ({ state, frame, send }: PointFacts): PadActions => {
  const chosen = endingOf(state.draft, frame);
  const choose = (ending: Ending) => () => send({ type: "endingChosen", ending, chosen });
  const forced = (value: boolean) => () => send({ type: "forcedChosen", forced: value });
  if (chosen?.type === "missed") {
    // The miss that shows as chosen is taken back by its own key.
    const back = chosen.miss ? { [chosen.miss]: choose(chosen) } : {};
    return { ...back, forced: forced(true), notForced: forced(false) };
  }
  const missed = (miss: Miss) => choose({ type: "missed", miss });
  return {
    winner: choose({ type: "winner" }),
    forcedMiss: choose({ type: "forced" }),
    net: missed("net"),
    wide: missed("wide"),
    long: missed("long"),
  };
};

/** Key balls: a last shot that nobody drew, and the counter. */
const keyBallActions = ({ state, frame, send }: PointFacts): PadActions => {
  const { draft } = state;
  const { subject } = frame;
  const last = draft.shots.at(-1);
  if (!subject || !(last || isServeIn(draft))) return {};
  const counter: PadActions = {
    satUp: () => send({ type: "satUp", by: 1 }),
    ...((draft.satUpKept ?? 0) > 0 ? { satUpLess: () => send({ type: "satUp", by: -1 }) } : {}),
  };
  if (last && last.striker !== subject) return counter;
  const chosen = endingOf(draft, frame);
  const striker = nextStriker(draft, frame);
  const undrawn = (winner: typeof striker) => () =>
    send({ type: "endingChosen", ending: { type: "undrawn", winner }, chosen });
  return { ...counter, undrawnWinner: undrawn(striker), undrawnMissed: undrawn(otherSide(striker)) };
};

const kindActions = (shot: Shot, send: PointFacts["send"]): PadActions =>
  Object.fromEntries(
    SHOT_KINDS.map((kind, i) => [
      `kind${i + 1}`,
      // The same again takes it back.
      () => send({ type: "kindChosen", ...(shot.kind === kind ? {} : { kind }) }),
    ]),
  );

const mendActions = (shot: Shot, isLast: boolean, send: PointFacts["send"]): PadActions => ({
  redraw: () => send({ type: "redrawWanted" }),
  otherPlayer: () => send({ type: "strikerChanged" }),
  remove: () => send({ type: "removed" }),
  ...kindActions(shot, send),
  ...(isLast
    ? {
        netCord: () => send({ type: "leftOutChosen", reason: "netCord" }),
        calledOut: () => send({ type: "leftOutChosen", reason: "calledOut" }),
      }
    : {}),
});

/** From chip to chip: the serve, then the balls in order. From none, the last ball or the serve's chip. */
const chipActions = ({ state, send }: PointFacts): PadActions => {
  const { opened, draft } = state;
  const last = draft.shots.length - 1;
  if (last < 0) return {};
  const open = (place: number) => () => send({ type: "opened", what: place < 0 ? "serve" : place });
  const at = opened === "serve" ? -1 : (opened ?? last + 1);
  return {
    ...(at > -1 ? { chipBefore: open(at - 1) } : {}),
    ...(at < last ? { chipAfter: open(at + 1) } : {}),
    ...(opened === undefined ? {} : { back: () => send({ type: "closed" }) }),
  };
};

/** What keys can do to the point that is being drawn, as the rows under the court show it. */
export const pointActions = (facts: PointFacts): PadActions => {
  const { state, send } = facts;
  const { draft, opened } = state;
  const shot = typeof opened === "number" ? draft.shots[opened] : undefined;
  if (shot) return { ...chipActions(facts), ...mendActions(shot, opened === draft.shots.length - 1, send) };
  if (opened === "serve") return { ...chipActions(facts), ...serveActions(facts) };
  return {
    ...chipActions(facts),
    ...(draft.shots.length === 0 ? serveActions(facts) : endingActions(facts)),
    ...keyBallActions(facts),
  };
};
