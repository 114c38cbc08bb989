import { otherSide, type Side } from "@courtloom/core";
import type { Shot } from "@courtloom/match-log";
import { JITTER, readStroke, type SeenPoint, type Stroke, seenByStriker } from "@courtloom/tennis";
import { type Ending, isServeIn, type PointDraft, type PointFrame } from "./point-draft.ts";

/** The stroke that a shot's drawing says; `undefined` for a touch. */
export const strokeOf = (shot: Shot, { seat, endOfA }: PointFrame): Stroke | undefined =>
  shot.to && readStroke({ seat, endOfA, striker: shot.striker, from: shot.from, to: shot.to });

/**
 * Whose ball starts at `from`. Every ball: in turn, the receiver first. Key balls: always the charted player's,
 * never in turn, as the opponent's go by undrawn. In both, a ball that starts beyond the drawing error on the
 * half of the player who is not due is that player's. SPEC PD3, PD24.
 */
export const strikerAt = (shots: readonly Shot[], from: SeenPoint, frame: PointFrame): Side => {
  const last = shots.at(-1);
  const due = frame.subject ?? otherSide(last ? last.striker : frame.server);
  const { y } = seenByStriker(from, { ...frame, striker: due });
  return y > JITTER ? otherSide(due) : due;
};

/** What the last drawing says for certain, beyond the drawing error: it ended in the net, wide or long. */
const drawnEnding = (shots: readonly Shot[], frame: PointFrame): Ending | undefined => {
  const last = shots.at(-1);
  const stroke = last && strokeOf(last, frame);
  if (!stroke?.isEndedCertain || stroke.ended === "in") return undefined;
  return { type: "missed", miss: stroke.ended };
};

/** What the last ball says by itself: its drawing, or that it was called out. */
const shownEnding = (shots: readonly Shot[], frame: PointFrame): Ending | undefined => {
  const drawn = drawnEnding(shots, frame);
  return drawn ?? (shots.at(-1)?.leftOut === "calledOut" ? { type: "missed" } : undefined);
};

/** How the point ended as far as it is known: what a person said, else what the drawing says for certain. */
export const endingOf = (draft: PointDraft, frame: PointFrame): Ending | undefined => {
  const { said, shots } = draft;
  if (said === "open") return undefined;
  // Before any ball is charted only an undrawn shot after a serve that was in can end the point.
  if (shots.length === 0) return said?.type === "undrawn" && isServeIn(draft) ? said : undefined;
  return said ?? shownEnding(shots, frame);
};

/** Who strikes, or struck, the shot after the last one charted: the receiver after the serve. */
export const nextStriker = (draft: PointDraft, frame: PointFrame): Side =>
  otherSide(draft.shots.at(-1)?.striker ?? frame.server);

/** Who won the point; `undefined` while it is not said. */
export const winnerOf = (draft: PointDraft, frame: PointFrame): Side | undefined => {
  if (draft.serve === "ace") return frame.server;
  if (draft.serve === "doubleFault") return otherSide(frame.server);
  const ending = endingOf(draft, frame);
  if (ending?.type === "undrawn") return ending.winner;
  const last = draft.shots.at(-1);
  if (!last || !ending) return undefined;
  return ending.type === "missed" ? otherSide(last.striker) : last.striker;
};
