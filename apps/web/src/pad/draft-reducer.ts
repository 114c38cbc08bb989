import { otherSide } from "@courtloom/core";
import type { LeftOut, Point, Shot, ShotKind } from "@courtloom/match-log";
import type { SeenPoint } from "@courtloom/tennis";
import { EMPTY_DRAFT, type Ending, isEmptyDraft, type PointDraft, type PointFrame } from "./point-draft.ts";
import { strikerAt } from "./read-draft.ts";
import { reopenPoint } from "./reopen-point.ts";
import { type Answer, withAnswer, withoutAnswers } from "./shot-answer.ts";

/** What is open for mending: the serve, or a shot by its place in the point. */
export type Opened = "serve" | number;

export interface DraftState {
  readonly draft: PointDraft;
  /** Earlier drafts of this point, oldest first; taking back goes through them one by one. */
  readonly past: readonly PointDraft[];
  readonly opened?: Opened;
  /** The next drawing replaces the opened shot. */
  readonly redrawing: boolean;
}

export type DraftEvent =
  | { readonly type: "served"; readonly outcome: "in" | "fault" | "ace" | "doubleFault" }
  | { readonly type: "serveLet" }
  | {
      readonly type: "drew";
      readonly from: SeenPoint;
      /** Absent for a touch. */
      readonly to?: SeenPoint;
      readonly frame: PointFrame;
    }
  | { readonly type: "opened"; readonly what: Opened }
  | { readonly type: "closed" }
  | { readonly type: "redrawWanted" }
  | { readonly type: "removed" }
  | { readonly type: "strikerChanged" }
  | { readonly type: "kindChosen"; readonly kind?: ShotKind }
  /** `ending` is what shows as chosen now, to be taken back when it is chosen again. */
  | { readonly type: "endingChosen"; readonly ending: Ending; readonly chosen: Ending | undefined }
  | { readonly type: "forcedChosen"; readonly forced: boolean }
  /** An answer about the ball at a place; the same again takes it back. */
  | { readonly type: "answered"; readonly place: number; readonly answer: Answer }
  /** Why the figures leave the last ball out; the same again takes it back. */
  | { readonly type: "leftOutChosen"; readonly reason: LeftOut }
  | { readonly type: "satUp"; readonly by: 1 | -1 }
  | { readonly type: "tookBack" }
  | { readonly type: "reopened"; readonly point: Point }
  /** What this phone had kept of the point, after a reload. */
  | { readonly type: "resumed"; readonly draft: PointDraft; readonly past: readonly PointDraft[] }
  | { readonly type: "cleared" };

export const EMPTY_STATE: DraftState = { draft: EMPTY_DRAFT, past: [], redrawing: false };

/** As much as a point may hold. */
const MOST_SAT_UP = 99;

const become = (state: DraftState, draft: PointDraft): DraftState => ({
  draft,
  past: [...state.past, state.draft],
  redrawing: false,
});

/** Keeps the chip open that is being mended. */
const mend = (state: DraftState, draft: PointDraft): DraftState => ({
  ...become(state, draft),
  ...(state.opened === undefined ? {} : { opened: state.opened }),
});

const withoutEnding = ({ said: _, missForced: __, ...draft }: PointDraft): PointDraft => draft;

const served = (draft: PointDraft, outcome: "in" | "fault" | "ace" | "doubleFault"): PointDraft => {
  const { serve: _, ...rest } = draft.shots.length > 0 ? draft : withoutEnding(draft);
  switch (outcome) {
    case "in":
      return { ...rest, serve: rest.faults === 0 ? "firstIn" : "secondIn" };
    case "fault":
      return { ...rest, faults: 1 };
    case "ace":
      return { ...rest, serve: "ace" };
    case "doubleFault":
      return { ...rest, faults: 1, serve: "doubleFault" };
  }
};

/** A ball was drawn after the serve, so the serve was in; which one is known when a fault or an ace was charted. */
const serveWasIn = (draft: PointDraft): PointDraft => {
  const told = draft.faults === 1 || draft.serve === "ace" || draft.serve === "doubleFault";
  return told ? { ...draft, serve: draft.faults === 1 ? "secondIn" : "firstIn" } : draft;
};

const drew = (state: DraftState, event: Extract<DraftEvent, { type: "drew" }>): DraftState => {
  const { draft, opened, redrawing } = state;
  const drawn = { from: event.from, ...(event.to ? { to: event.to } : {}) };
  const redrawn = redrawing && typeof opened === "number" ? draft.shots[opened] : undefined;
  if (redrawn && typeof opened === "number") {
    const { from: _, to: __, ...kept } = redrawn;
    const shots = draft.shots.with(opened, { ...kept, ...drawn });
    const isLast = opened === draft.shots.length - 1;
    return become(state, { ...(isLast ? withoutEnding(draft) : draft), shots });
  }
  const shot: Shot = { striker: strikerAt(draft.shots, event.from, event.frame), ...drawn };
  // Only what a last ball was like can have decided the point.
  const before = draft.shots.map(({ leftOut: _, ...kept }): Shot => kept);
  return become(state, { ...serveWasIn(withoutEnding(draft)), shots: [...before, shot] });
};

const mendShot = (state: DraftState, change: (shot: Shot) => Shot): DraftState => {
  const { opened, draft } = state;
  const shot = typeof opened === "number" ? draft.shots[opened] : undefined;
  if (typeof opened !== "number" || !shot) return state;
  return mend(state, { ...draft, shots: draft.shots.with(opened, change(shot)) });
};

const sameEnding = (a: Ending | undefined, b: Ending): boolean => {
  if (a?.type === "missed" && b.type === "missed") return a.miss === b.miss;
  if (a?.type === "undrawn" && b.type === "undrawn") return a.winner === b.winner;
  return a?.type === b.type;
};

const answered = (state: DraftState, place: number, answer: Answer): DraftState => {
  const shot = state.draft.shots[place];
  if (!shot) return state;
  return mend(state, { ...state.draft, shots: state.draft.shots.with(place, withAnswer(shot, answer)) });
};

/** A ball that was called out ended the point, whatever was said before. */
const leftOutChosen = (state: DraftState, reason: LeftOut): DraftState => {
  const { said, ...rest } = state.draft;
  const last = rest.shots.at(-1);
  if (!last) return state;
  const { leftOut, ...shot } = last;
  const chosen = leftOut !== reason;
  const shots = [...rest.shots.slice(0, -1), chosen ? { ...shot, leftOut: reason } : shot];
  const overruled = chosen && reason === "calledOut" && !(typeof said === "object" && said.type === "missed");
  return mend(state, { ...rest, ...(said && !overruled ? { said } : {}), shots });
};

const endingChosen = (draft: PointDraft, ending: Ending, chosen: Ending | undefined): PointDraft => {
  const { missForced: _, ...rest } = draft;
  const takenBack = sameEnding(chosen, ending);
  const last = rest.shots.at(-1);
  // Said to have won, or taken back, the ball was not called out after all.
  if (last?.leftOut === "calledOut" && (takenBack || ending.type !== "missed")) {
    const { leftOut: __, ...shot } = last;
    return { ...rest, shots: [...rest.shots.slice(0, -1), shot], said: takenBack ? "open" : ending };
  }
  return { ...rest, said: takenBack ? "open" : ending };
};

/** At 0 it is as if nobody had counted: unknown. */
const satUp = (draft: PointDraft, by: 1 | -1): PointDraft => {
  const { satUpKept = 0, ...rest } = draft;
  const count = Math.min(MOST_SAT_UP, satUpKept + by);
  return count > 0 ? { ...rest, satUpKept: count } : rest;
};

const removed = (state: DraftState): DraftState => {
  const { opened, draft } = state;
  if (typeof opened !== "number") return state;
  const isLast = opened === draft.shots.length - 1;
  const shots = draft.shots.filter((_, i) => i !== opened);
  return become(state, { ...(isLast ? withoutEnding(draft) : draft), shots });
};

const tookBack = (state: DraftState): DraftState => {
  const draft = state.past.at(-1);
  return draft ? { draft, past: state.past.slice(0, -1), redrawing: false } : EMPTY_STATE;
};

/** One step of the point that is being charted. Pure; the score and the log are not its business. */
export const reduceDraft = (state: DraftState, event: DraftEvent): DraftState => {
  const { draft } = state;
  switch (event.type) {
    case "served":
      return become(state, served(draft, event.outcome));
    case "serveLet":
      return mend(state, { ...draft, lets: draft.lets + 1 });
    case "drew":
      return drew(state, event);
    case "opened":
      return { ...state, opened: event.what, redrawing: false };
    case "closed":
      return { draft, past: state.past, redrawing: false };
    case "redrawWanted":
      return { ...state, redrawing: typeof state.opened === "number" };
    case "removed":
      return removed(state);
    case "strikerChanged":
      return mendShot(state, (shot) => ({ ...withoutAnswers(shot), striker: otherSide(shot.striker) }));
    case "kindChosen":
      return mendShot(state, ({ kind: _, ...shot }) => ({
        ...shot,
        ...(event.kind ? { kind: event.kind } : {}),
      }));
    case "endingChosen":
      return become(state, endingChosen(draft, event.ending, event.chosen));
    case "forcedChosen": {
      const { missForced, ...rest } = draft;
      return become(state, missForced === event.forced ? rest : { ...rest, missForced: event.forced });
    }
    case "answered":
      return answered(state, event.place, event.answer);
    case "leftOutChosen":
      return leftOutChosen(state, event.reason);
    case "satUp":
      return mend(state, satUp(draft, event.by));
    case "tookBack":
      return tookBack(state);
    case "reopened": {
      const reopened = reopenPoint(event.point);
      return isEmptyDraft(reopened)
        ? EMPTY_STATE
        : { draft: reopened, past: [EMPTY_DRAFT], redrawing: false };
    }
    case "resumed":
      return { draft: event.draft, past: event.past, redrawing: false };
    case "cleared":
      return EMPTY_STATE;
  }
};
