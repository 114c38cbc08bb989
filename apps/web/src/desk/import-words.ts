import type { CheckedLane, TakenLane } from "@courtloom/api";

const entries = (count: number): string => (count === 1 ? "1 entry" : `${count} entries`);

/** Who charted a lane, or that nobody knows. */
export const laneWords = ({ match, chartist }: CheckedLane): string => {
  if (match === null) return "Of a match that is not on this academy's list. It is not taken in.";
  if (chartist !== null) return `Charted by ${chartist}`;
  return "The server never heard of this phone's lane. It is kept beside the score.";
};

/** The counts of a lane, those that are none left out. */
export const countWords = (lane: CheckedLane): readonly string[] => {
  const all: readonly (readonly [number, string])[] = [
    [lane.fresh, "new"],
    [lane.alreadyThere, "already there"],
    [lane.elsewhere, "already there in another lane"],
    [lane.conflicting, "under a number that another entry has"],
    [lane.unreadable, "cannot be read, kept aside"],
  ];
  const points = lane.points === 1 ? "1 point" : `${lane.points} points`;
  return [
    `${entries(lane.entries)}, ${points} among them`,
    ...all.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}`),
  ];
};

/** How many entries would be new: with none there is nothing to confirm. */
export const freshCount = (lanes: readonly CheckedLane[]): number =>
  lanes.reduce((sum, { match, fresh, unreadable }) => sum + (match === null ? 0 : fresh + unreadable), 0);

const STOP_WORDS: Readonly<
  Record<NonNullable<TakenLane["stop"]>["code"], (n: number | undefined) => string>
> = {
  gap: (n) =>
    `Entry ${n} has to come first and is in neither place. Use "Save everything of this match" on the phone and take that file in.`,
  identity_conflict: (n) =>
    `Entry ${n} is there already as another one. Nothing was overwritten; both stay, here and in the file.`,
  not_open: () => "This match has not begun on the server. Open it from a phone once, then take the file in.",
  sealed: () => "This match is closed to new lanes. The director can still put something right.",
  unknown_match: () => "This match is not on this academy's list.",
  unknown_lane: () => "The phone opened this lane just now. It sends the entries by itself.",
  unavailable: () => "The server could not reach its data. Take the file in again; nothing comes twice.",
};

/** What became of a lane, in sentences. */
export const takenWords = ({ took, passedOver, beside, stop }: TakenLane): readonly string[] => [
  `${entries(took)} taken in.`,
  ...(passedOver > 0 ? [`${passedOver} passed over: there already, or kept aside.`] : []),
  ...(beside ? ["Kept beside the score, as no phone had opened this lane."] : []),
  ...(stop ? [STOP_WORDS[stop.code](stop.n)] : []),
];
