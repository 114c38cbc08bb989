import type { AlertMarks, MarkedBy } from "@courtloom/protocol";
import type { MarkedAlert, StoredMark } from "./alert-store.ts";

export type NameOf = (memberId: string) => string;

/** The snooze that holds: while its alert is open, and its set or its match is played. SPEC AL21. */
const snoozeOf = ({ marks, state, said }: MarkedAlert): StoredMark | undefined => {
  const last = marks.findLast(({ kind }) => kind === "snooze" || kind === "wake");
  const isOpen = (state === "standing" || state === "easing") && !said.isOver;
  if (!isOpen || last?.kind !== "snooze") return undefined;
  return last.details.until === "match" || last.details.set === said.set ? last : undefined;
};

export const isSnoozed = (alert: MarkedAlert): boolean => snoozeOf(alert) !== undefined;

const lastBy = (marks: readonly StoredMark[]): ReadonlyMap<string, StoredMark> =>
  new Map(marks.map((mark) => [mark.by, mark]));

const of = (marks: readonly StoredMark[], kind: StoredMark["kind"]): readonly StoredMark[] =>
  marks.filter((mark) => mark.kind === kind);

/** What people did about an alert, as it stands now. SPEC AL20, AL21. */
export const alertMarksOf = (alert: MarkedAlert, nameOf: NameOf): AlertMarks => {
  const { marks } = alert;
  const byOf = ({ by, atMs }: StoredMark): MarkedBy => ({ memberId: by, name: nameOf(by), atMs });
  const firstSeen = [
    ...new Map(
      of(marks, "seen")
        .toReversed()
        .map((mark) => [mark.by, mark]),
    ).values(),
  ];
  const assigned = of(marks, "assign").at(-1);
  const memberId = assigned?.details.memberId;
  const snoozed = snoozeOf(alert);
  const { reason, until } = snoozed?.details ?? {};
  return {
    seen: firstSeen.toSorted((a, b) => marks.indexOf(a) - marks.indexOf(b)).map(byOf),
    ...(assigned && memberId ? { assigned: { memberId, name: nameOf(memberId), by: byOf(assigned) } } : {}),
    ...(snoozed && reason !== undefined && until ? { snoozed: { ...byOf(snoozed), reason, until } } : {}),
    useful: [...lastBy(of(marks, "useful")).values()].map((mark) => ({
      ...byOf(mark),
      useful: mark.details.useful === true,
    })),
  };
};

/** Whether a mark says anything that the alert's marks do not say already. SPEC AL20. */
export const isNewMark = (alert: MarkedAlert, { kind, by, details }: StoredMark): boolean => {
  const { marks } = alert;
  const own = of(marks, kind).filter((mark) => mark.by === by);
  const snoozed = snoozeOf(alert);
  switch (kind) {
    case "seen":
      return own.length === 0;
    case "wake":
      return snoozed !== undefined;
    case "assign":
      return (of(marks, "assign").at(-1)?.details.memberId ?? null) !== (details.memberId ?? null);
    case "useful":
      return own.at(-1)?.details.useful !== details.useful;
    case "snooze":
      return snoozed?.by !== by || JSON.stringify(snoozed.details) !== JSON.stringify(details);
  }
};
