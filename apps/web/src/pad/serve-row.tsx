import type { DraftEvent } from "./draft-reducer.ts";
import type { PointDraft } from "./point-draft.ts";
import { Segment } from "./segment.tsx";

interface ServeRowProps {
  readonly draft: PointDraft;
  readonly send: (event: DraftEvent) => void;
}

/** What became of the serve. After a fault the row asks about the second; a let on the serve is counted beside it. */
export const ServeRow = ({ draft, send }: ServeRowProps) => {
  const { faults, serve, shots, lets } = draft;
  const first = faults === 0;
  const inPlay = serve === "firstIn" || serve === "secondIn";
  const unanswered = shots.length === 0;
  const choices = [
    {
      id: "in",
      label: first ? "First in" : "Second in",
      pressed: inPlay,
      onPress: () => send({ type: "served", outcome: "in" }),
    },
    ...(first
      ? [{ id: "fault", label: "Fault", onPress: () => send({ type: "served", outcome: "fault" }) }]
      : []),
    ...(unanswered
      ? [
          {
            id: "ace",
            label: "Ace",
            pressed: serve === "ace",
            onPress: () => send({ type: "served", outcome: "ace" }),
          },
        ]
      : []),
    ...(unanswered && !first
      ? [
          {
            id: "double",
            label: "Double fault",
            pressed: serve === "doubleFault",
            onPress: () => send({ type: "served", outcome: "doubleFault" }),
          },
        ]
      : []),
    {
      id: "let",
      label: lets > 0 ? `Let (${lets})` : "Let",
      onPress: () => send({ type: "serveLet" }),
    },
  ] as const;
  return <Segment label={first ? "First serve" : "Second serve"} choices={choices} />;
};
