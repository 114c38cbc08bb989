import type { LeftOut, Shot } from "@courtloom/match-log";
import type { DraftEvent } from "./draft-reducer.ts";
import { Segment } from "./segment.tsx";

const REASONS: readonly { readonly id: LeftOut; readonly label: string }[] = [
  { id: "netCord", label: "Net cord decided it" },
  { id: "calledOut", label: "Called out, I saw it in" },
];

interface LeftOutRowProps {
  readonly shot: Shot;
  readonly send: (event: DraftEvent) => void;
}

/** Why the score counts the last ball and the figures leave it out. */
export const LeftOutRow = ({ shot, send }: LeftOutRowProps) => (
  <Segment
    label="The score counts this ball, figures leave it out"
    choices={REASONS.map(({ id, label }) => ({
      id,
      label,
      action: id,
      pressed: shot.leftOut === id,
      onPress: () => send({ type: "leftOutChosen", reason: id }),
    }))}
  />
);
