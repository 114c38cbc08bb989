import type { Side } from "@courtloom/core";
import type { EntryBody } from "@courtloom/match-log";
import type { EndSeen } from "@courtloom/tennis";
import { useState } from "react";
import { Charting, type ChartingProps } from "./charting.tsx";
import { hasSeenEnds } from "./ends-seen.ts";
import type { PadSettings } from "./pad-settings.ts";
import { type SeatChoice, seatOf, shownEndOfA } from "./shown-ends.ts";
import { type StartAnswers, StartSheet } from "./start-sheet.tsx";

type MatchScreenProps = Omit<ChartingProps, "frame">;

/** The answers as entries; what the match knows already is not said again. */
const factsOf = (
  { firstServer, atFirstEnd, subject }: StartAnswers,
  seat: SeatChoice,
  server: Side | null,
): readonly EntryBody[] => {
  const [first, second]: readonly [EndSeen, EndSeen] = seat === "side" ? ["left", "right"] : ["near", "far"];
  return [
    ...(firstServer && firstServer !== server
      ? [{ kind: "ServerStated", to: firstServer, slip: "chartist" } as const]
      : []),
    ...(atFirstEnd ? [{ kind: "EndsStated", endOfA: atFirstEnd === "A" ? first : second } as const] : []),
    ...(subject ? [{ kind: "SubjectsChanged", subjects: [subject] } as const] : []),
  ];
};

/**
 * Asks who serves and who is where until this phone's person has said it, and charts from then on. A seat
 * becomes theirs only with its ends, so that a reload in between cannot draw by the ends of another seat.
 */
export const MatchScreen = (props: MatchScreenProps) => {
  const { session, snapshot, view, match, settings, onSettings } = props;
  const [wanted, setWanted] = useState<SeatChoice>();
  const [started, setStarted] = useState(false);
  const seat = wanted ?? settings.seat;
  const endOfA = shownEndOfA(settings.seat, view.endOfA, view.subjects);
  const fresh = view.points.length === 0 && view.endOfA === undefined && !started;
  const ownEnds = settings.seat === "alwaysNear" || hasSeenEnds(snapshot.log, snapshot.record.laneId);
  // A second lane begins with the lead's score, server and all.
  const begun = view.points.length > 0 || (snapshot.whole.view?.points.length ?? 0) > 0;
  const asksPlace = wanted !== undefined || endOfA === undefined || fresh || !ownEnds;
  // One person at key balls follows one player.
  const asksSubject = snapshot.level === "key" && view.subjects.length > 1;
  if ((asksPlace || asksSubject) && !view.score.over) {
    const start = async (answers: StartAnswers) => {
      const facts = factsOf(answers, seat, view.score.server);
      // With its first fact a second lane states the score at which it begins.
      const begins = facts.length === 0 && snapshot.record.second;
      for (const fact of begins ? [{ kind: "LevelChanged", level: snapshot.level } as const] : facts)
        await session.chart(fact);
      if (seat !== settings.seat) onSettings({ ...settings, seat });
      setWanted(undefined);
      setStarted(true);
    };
    return (
      <StartSheet
        names={match.names}
        seat={seat}
        asksServer={asksPlace && !begun}
        asksEnds={asksPlace && seat !== "alwaysNear"}
        asksSubject={asksSubject}
        onSeat={(chosen) => setWanted(chosen === settings.seat ? undefined : chosen)}
        onStart={(answers) => void start(answers)}
      />
    );
  }
  const chooseSeat = (next: PadSettings) => {
    // From another place the ends are seen otherwise; nobody guesses which is which.
    if (next.seat === settings.seat || next.seat === "alwaysNear") onSettings(next);
    else setWanted(next.seat);
  };
  const subject = snapshot.level === "key" ? view.subjects[0] : undefined;
  const frame = {
    server: view.score.server ?? "A",
    seat: seatOf(settings.seat),
    endOfA: endOfA ?? "near",
    ...(subject ? { subject } : {}),
  };
  return <Charting {...props} frame={frame} onSettings={chooseSeat} />;
};
