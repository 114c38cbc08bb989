import type { AlertLine, AlertMarks, AlertMember, MarkAsked, MarkedBy, SnoozeEnd } from "@courtloom/protocol";
import { wallTime } from "../board/wall-time.ts";

export const UNTIL_WORDS = {
  set: "until the set ends",
  match: "until the match ends",
} as const satisfies Readonly<Record<SnoozeEnd, string>>;

const byAt = ({ name, atMs }: MarkedBy, timeZone: string): string => `${name} ${wallTime(atMs, timeZone)}`;

/** "Snoozed by Maren H. 11:34 until the set ends"; the reason is the person's own words and stands apart. SPEC rule AS14. */
export const snoozeWords = (snoozed: NonNullable<AlertMarks["snoozed"]>, timeZone: string): string =>
  `Snoozed by ${byAt(snoozed, timeZone)} ${UNTIL_WORDS[snoozed.until]}`;

const list = (people: readonly MarkedBy[], timeZone: string): string =>
  people.map((person) => byAt(person, timeZone)).join(", ");

/** Who did what and when, a line each, in the order of doing; a snooze has a line of its own. */
export const doneLines = ({ marks }: Pick<AlertLine, "marks">, timeZone: string): readonly string[] => {
  const { seen, assigned, useful } = marks;
  const [yes, no] = [useful.filter((mark) => mark.useful), useful.filter((mark) => !mark.useful)];
  return [
    ...(seen.length > 0 ? [`Seen by ${list(seen, timeZone)}`] : []),
    ...(assigned ? [`Assigned to ${assigned.name} by ${byAt(assigned.by, timeZone)}`] : []),
    ...(yes.length > 0 ? [`Useful, said ${list(yes, timeZone)}`] : []),
    ...(no.length > 0 ? [`Not useful, said ${list(no, timeZone)}`] : []),
  ];
};

/** A mark that is not known to have arrived, in words. */
export const askedWords = (mark: MarkAsked, members: readonly AlertMember[]): string => {
  switch (mark.kind) {
    case "seen":
      return "Seen";
    case "wake":
      return "Snooze ended";
    case "snooze":
      return `Snoozed ${UNTIL_WORDS[mark.until]}`;
    case "useful":
      return mark.useful ? "Useful" : "Not useful";
    case "assign": {
      const to = members.find(({ memberId }) => memberId === mark.memberId);
      return mark.memberId === null ? "Assigned to nobody" : `Assigned to ${to?.name ?? "a member"}`;
    }
  }
};
