import { otherSide, type Side } from "@courtloom/core";
import type { Shot } from "@courtloom/match-log";
import { JITTER, readStroke, type SeenPoint, type Stroke, seenByStriker } from "@courtloom/tennis";
import type { Ending, PointDraft, PointFrame } from "./point-draft.ts";

/** The stroke that a shot's drawing says; `undefined` for a touch. */
export const strokeOf = (shot: Shot, { seat, endOfA }: PointFrame): Stroke | undefined =>
  shot.to && readStroke({ seat, endOfA, striker: shot.striker, from: shot.from, to: shot.to });

/**
 * Whose ball starts at `from`: in turn, the receiver first. A ball that starts beyond the drawing error on
 * the other player's half is the other player's, since a shot in between went by undrawn.
 */
export const strikerAt = (shots: readonly Shot[], from: SeenPoint, frame: PointFrame): Side => {
  const last = shots.at(-1);
  const due = otherSide(last ? last.striker : frame.server);
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

/** How the point ended as far as it is known: what a person said, else what the drawing says for certain. */
export const endingOf = (draft: PointDraft, frame: PointFrame): Ending | undefined => {
  if (draft.said === "open" || draft.shots.length === 0) return undefined;
  return draft.said ?? drawnEnding(draft.shots, frame);
};

/** Who won the point; `undefined` while it is not said. */
export const winnerOf = (draft: PointDraft, frame: PointFrame): Side | undefined => {
  if (draft.serve === "ace") return frame.server;
  if (draft.serve === "doubleFault") return otherSide(frame.server);
  const last = draft.shots.at(-1);
  const ending = endingOf(draft, frame);
  if (!last || !ending) return undefined;
  return ending.type === "missed" ? otherSide(last.striker) : last.striker;
};
