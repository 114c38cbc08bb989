import type { ByPlayer } from "@courtloom/core";
import {
  applyEntry,
  ENTRY_VERSION,
  type EntryBody,
  type MatchView,
  type SetAsideReason,
  scoreRefusal,
  type ViewedPoint,
} from "@courtloom/match-log";
import { type ScoreState, scoreErrorText } from "@courtloom/tennis";
import { scoreWords } from "../second/score-words.ts";

/** What a mend would change, in words. */
export interface Change {
  /** One sentence about the score; always there. */
  readonly score: string;
  /** What else changes, each a sentence; empty when nothing does. */
  readonly also: readonly string[];
  /** Why it cannot be done; then nothing is written. */
  readonly impossible?: string;
}

const PREVIEW = "preview";

/** The match with some entries more; nothing is charted by asking. */
export const viewWith = (view: MatchView, bodies: readonly EntryBody[], epoch: number): MatchView =>
  bodies.reduce((now, body, i) => {
    const entry = { v: ENTRY_VERSION, id: `${PREVIEW}-${i}`, n: i + 1, atMs: 0, wallMs: 0, body } as const;
    return applyEntry(now, { pos: now.pos + 1, laneId: PREVIEW, epoch, entry });
  }, view);

const gameOf = ({ before }: ViewedPoint): string =>
  JSON.stringify([before.sets.length, before.games, before.server]);

const movedPoints = (now: MatchView, then: MatchView): number => {
  const games = new Map(now.points.map((point) => [point.id, gameOf(point)]));
  return then.points.filter((point) => {
    const was = games.get(point.id);
    return was !== undefined && was !== gameOf(point);
  }).length;
};

const points = (count: number): string => (count === 1 ? "1 point" : `${count} points`);

const scoreSentence = (now: ScoreState, then: ScoreState): string =>
  scoreWords(now) === scoreWords(then)
    ? `No change in the score: ${scoreWords(now)}.`
    : `The score ${scoreWords(now)} becomes ${scoreWords(then)}.`;

const asideSentences = (now: MatchView, then: MatchView): readonly string[] => {
  const [before, after] = [now, then].map((view) => new Set(view.setAside.map(({ id }) => id)));
  const gone = [...(after ?? [])].filter((id) => !before?.has(id) && !id.startsWith(PREVIEW)).length;
  const back = [...(before ?? [])].filter((id) => !after?.has(id)).length;
  return [
    ...(gone > 0 ? [`${points(gone)} would no longer fit: kept, and not counted.`] : []),
    ...(back > 0 ? [`${points(back)} that did not fit would count again.`] : []),
  ];
};

const alsoSentences = (now: MatchView, then: MatchView, names: ByPlayer<string>): readonly string[] => {
  const moved = movedPoints(now, then);
  const { server } = then.score;
  return [
    ...(server && server !== now.score.server ? [`${names[server]} serves next.`] : []),
    ...(now.endOfA !== undefined && then.endOfA !== now.endOfA ? ["Ends turn for the next point."] : []),
    ...(moved > 0
      ? [`${points(moved)} of those charted would be in another game or served by another player.`]
      : []),
    ...asideSentences(now, then),
    ...(now.score.over && !then.score.over ? ["The match is no longer over."] : []),
    ...(!now.score.over && then.score.over ? ["The match is over."] : []),
  ];
};

const ASIDE_WORDS: Readonly<Record<SetAsideReason, string>> = {
  matchOver: "The match is over. Undo its end first.",
  unknownTarget: "That entry is no longer there. Close this and look again.",
  impossibleScore: "There is no such score in this format. Look at the numbers again.",
  notLead: "Another phone leads this match now.",
  secondOpening: "The match is open already.",
  sealed: "The match is closed. Only a director corrects it now.",
  notSuspended: "Play is not suspended.",
};

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

const whyNot = (then: MatchView): string | undefined => {
  const refused = then.setAside.find(({ id }) => id.startsWith(PREVIEW));
  if (!refused) return undefined;
  const told = scoreRefusal(then, refused.id);
  return told ? capital(scoreErrorText(told)) : ASIDE_WORDS[refused.reason];
};

/**
 * What some entries would change, before anybody confirms them: pure, nothing is written. A change that the score
 * cannot take says why. SPEC PD81, PD82.
 */
export const previewChange = (
  view: MatchView,
  bodies: readonly EntryBody[],
  { epoch, names }: { readonly epoch: number; readonly names: ByPlayer<string> },
): Change => {
  const then = viewWith(view, bodies, epoch);
  const impossible = whyNot(then);
  return {
    score: scoreSentence(view.score, then.score),
    also: alsoSentences(view, then, names),
    ...(impossible ? { impossible } : {}),
  };
};
