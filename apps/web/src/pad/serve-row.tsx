import type { DraftEvent } from "./draft-reducer.ts";
import type { PointDraft } from "./point-draft.ts";
import { Segment, type SegmentChoice } from "./segment.tsx";

interface ServeRowProps {
  readonly draft: PointDraft;
  readonly send: (event: DraftEvent) => void;
}

/** What became of the serve. After a fault the row asks about the second; a let on the serve is counted beside it. */
export const ServeRow = ({ draft, send }: ServeRowProps) => {
  const { faults, serve, shots, lets } = draft;
  const first = faults === 0;
  const unanswered = shots.length === 0;
  const served = (outcome: "in" | "fault" | "ace" | "doubleFault") => () => send({ type: "served", outcome });
  const serveIn: SegmentChoice = {
    id: "in",
    label: first ? "First in" : "Second in",
    action: "serveIn",
    pressed: serve === "firstIn" || serve === "secondIn",
    onPress: served("in"),
  };
  const fault: SegmentChoice = { id: "fault", label: "Fault", action: "fault", onPress: served("fault") };
  const ace: SegmentChoice = {
    id: "ace",
    label: "Ace",
    action: "ace",
    pressed: serve === "ace",
    onPress: served("ace"),
  };
  const double: SegmentChoice = {
    id: "double",
    label: "Double fault",
    action: "fault",
    pressed: serve === "doubleFault",
    onPress: served("doubleFault"),
  };
  const serveLet: SegmentChoice = {
    id: "let",
    label: lets > 0 ? `Let (${lets})` : "Let",
    action: "serveLet",
    onPress: () => send({ type: "serveLet" }),
  };
  const choices = [
    serveIn,
    ...(first ? [fault] : []),
    ...(unanswered ? [ace] : []),
    ...(unanswered && !first ? [double] : []),
    serveLet,
  ];
  return <Segment label={first ? "First serve" : "Second serve"} choices={choices} />;
};
