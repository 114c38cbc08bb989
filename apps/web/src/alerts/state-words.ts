import type { AlertLine, AlertState } from "@courtloom/protocol";
import { wallTime } from "../board/wall-time.ts";
import type { MarkName } from "../loom/mark.tsx";

/** An alert's state in shape and word. */
export const STATE_FLAGS = {
  standing: ["alert", "Alert"],
  easing: ["easing", "Easing"],
  closed: ["over", "Closed"],
  withdrawn: ["withdrawn", "Withdrawn"],
} as const satisfies Readonly<Record<AlertState, readonly [MarkName, string]>>;

/** Raised and not over: what "2 open" counts. */
export const isOpen = ({ state }: Pick<AlertLine, "state">): boolean =>
  state === "standing" || state === "easing";

const correctedBy = ({ withdrawn }: Pick<AlertLine, "withdrawn">): string =>
  `A correction ${withdrawn?.chartist === undefined ? "" : `by ${withdrawn.chartist} `}changed what was charted.`;

/** What the state means, after its word: "Easing. The evidence has faded." SPEC rule AS13. */
export const stateSentence = (
  line: Pick<AlertLine, "state" | "withdrawn" | "raisedMs">,
  timeZone: string,
): string => {
  switch (line.state) {
    case "standing":
      return `Raised ${wallTime(line.raisedMs, timeZone)}.`;
    case "easing":
      return `The evidence has faded. Raised ${wallTime(line.raisedMs, timeZone)}.`;
    case "closed":
      return "It eased, then ends were changed.";
    case "withdrawn":
      return correctedBy(line);
  }
};

/** "Withdrawn 11:29" carries its time in the word itself; the others do not. */
export const stateWord = (line: Pick<AlertLine, "state" | "withdrawn">, timeZone: string): string => {
  const word = STATE_FLAGS[line.state][1];
  return line.withdrawn ? `${word} ${wallTime(line.withdrawn.atMs, timeZone)}` : word;
};
