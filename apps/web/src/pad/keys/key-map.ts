/** Every action of the pad that a key does. The names are for the program; `KEY_MAP` has the words. */
export type PadAction =
  | "serveIn"
  | "fault"
  | "ace"
  | "serveLet"
  | "winner"
  | "forcedMiss"
  | "net"
  | "wide"
  | "long"
  | "forced"
  | "notForced"
  | "undrawnWinner"
  | "undrawnMissed"
  | "satUp"
  | "satUpLess"
  | "pointA"
  | "pointB"
  | "done"
  | "undo"
  | "replay"
  | "swapEnds"
  | "nextLevel"
  | "chipBefore"
  | "chipAfter"
  | "redraw"
  | "otherPlayer"
  | "remove"
  | "netCord"
  | "calledOut"
  | "questionBefore"
  | "questionAfter"
  | "back"
  | "more"
  | "otherCourt"
  | "keyMap"
  | `kind${1 | 2 | 3 | 4 | 5 | 6 | 7 | 8}`
  | `answer${1 | 2 | 3 | 4 | 5}`;

/** The parts of the shown map, in its order. */
export const KEY_PARTS = ["Always", "Serve", "How it ended", "Open ball", "Questions"] as const;
export type KeyPart = (typeof KEY_PARTS)[number];

export interface PadKey {
  readonly action: PadAction;
  /** The key's place on the keyboard, as `KeyboardEvent.code` names it, so that other layouts keep the same hand. */
  readonly code: string;
  readonly shift?: true;
  readonly part: KeyPart;
  /** What it does, in the words of the screen; `A` and `B` stand for the players' names. */
  readonly label: string;
}

const KINDS = [
  "Groundstroke",
  "Return",
  "Approach",
  "Passing shot",
  "Volley",
  "Overhead",
  "Lob",
  "Drop shot",
] as const;

const digits = <Count extends number>(counts: readonly Count[]) =>
  counts.map((count) => ({ count, code: `Digit${count}` }) as const);

/**
 * The one table of the pad's keys: what is handled, shown and tried is read from it. Digits belong to whatever
 * is asked now (the serve, how the point ended, the ball that is open); no other key means two things. The letters
 * of `courtCells` draw and are not in here. SPEC PD64.
 */
export const KEY_MAP: readonly PadKey[] = [
  { action: "done", code: "Enter", part: "Always", label: "Done" },
  { action: "undo", code: "Backspace", part: "Always", label: "Undo" },
  { action: "pointA", code: "KeyV", part: "Always", label: "Point A, or not seen: A" },
  { action: "pointB", code: "KeyB", part: "Always", label: "Point B, or not seen: B" },
  { action: "satUp", code: "KeyP", part: "Always", label: "Sat up, kept" },
  { action: "satUpLess", code: "KeyP", shift: true, part: "Always", label: "One less sat up" },
  { action: "replay", code: "KeyR", part: "Always", label: "Replay the point" },
  { action: "swapEnds", code: "KeyT", part: "Always", label: "Swap ends from this point" },
  { action: "nextLevel", code: "KeyN", part: "Always", label: "Next level" },
  { action: "otherCourt", code: "KeyY", part: "Always", label: "The other court" },
  { action: "more", code: "KeyH", part: "Always", label: "More" },
  { action: "back", code: "Escape", part: "Always", label: "Close the ball, or back to the court" },
  { action: "keyMap", code: "Slash", shift: true, part: "Always", label: "These keys" },
  { action: "serveIn", code: "Digit1", part: "Serve", label: "First in, second in" },
  { action: "fault", code: "Digit2", part: "Serve", label: "Fault, double fault" },
  { action: "ace", code: "Digit3", part: "Serve", label: "Ace" },
  { action: "serveLet", code: "Digit4", part: "Serve", label: "Let" },
  { action: "winner", code: "Digit1", part: "How it ended", label: "Winner" },
  { action: "forcedMiss", code: "Digit2", part: "How it ended", label: "Forced a miss" },
  { action: "net", code: "Digit3", part: "How it ended", label: "Net" },
  { action: "wide", code: "Digit4", part: "How it ended", label: "Wide" },
  { action: "long", code: "Digit5", part: "How it ended", label: "Long" },
  { action: "forced", code: "Digit6", part: "How it ended", label: "The miss was forced" },
  { action: "notForced", code: "Digit7", part: "How it ended", label: "The miss was not forced" },
  { action: "undrawnWinner", code: "Digit8", part: "How it ended", label: "Last shot, not drawn: winner" },
  { action: "undrawnMissed", code: "Digit9", part: "How it ended", label: "Last shot, not drawn: missed" },
  { action: "chipBefore", code: "ArrowLeft", part: "Open ball", label: "Ball before" },
  { action: "chipAfter", code: "ArrowRight", part: "Open ball", label: "Ball after" },
  { action: "redraw", code: "KeyF", part: "Open ball", label: "Redraw" },
  { action: "otherPlayer", code: "KeyG", part: "Open ball", label: "The other player’s ball" },
  { action: "remove", code: "Delete", part: "Open ball", label: "Remove" },
  ...digits([1, 2, 3, 4, 5, 6, 7, 8]).map(
    ({ count, code }): PadKey => ({
      action: `kind${count}`,
      code,
      part: "Open ball",
      label: KINDS[count - 1] ?? "",
    }),
  ),
  { action: "netCord", code: "Digit9", part: "Open ball", label: "Net cord decided it" },
  { action: "calledOut", code: "Digit0", part: "Open ball", label: "Called out, I saw it in" },
  { action: "questionBefore", code: "ArrowUp", part: "Questions", label: "Question before" },
  { action: "questionAfter", code: "ArrowDown", part: "Questions", label: "Question after" },
  ...digits([1, 2, 3, 4, 5]).map(
    ({ count, code }): PadKey => ({
      action: `answer${count}`,
      code,
      shift: true,
      part: "Questions",
      label: `Answer ${count} of the question`,
    }),
  ),
];

/** The pressed key, as far as it tells keys apart. */
export interface PressedKey {
  readonly code: string;
  readonly key: string;
  readonly shift: boolean;
}

/** What a key may do, in the table's order; at most one of them can be done at any moment. "?" is found by its sign. */
export const actionsOf = ({ code, key, shift }: PressedKey): readonly PadAction[] => {
  if (key === "?") return ["keyMap"];
  return KEY_MAP.filter((each) => each.code === code && (each.shift ?? false) === shift).map(
    ({ action }) => action,
  );
};
