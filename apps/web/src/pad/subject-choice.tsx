import type { ByPlayer, Side } from "@courtloom/core";
import { Segment } from "./segment.tsx";

interface SubjectChoiceProps {
  readonly names: ByPlayer<string>;
  readonly chosen: Side | undefined;
  readonly onChoose: (side: Side) => void;
}

/** Key balls, both players of the academy: whose balls this phone charts. Nothing is chosen beforehand. */
export const SubjectChoice = ({ names, chosen, onChoose }: SubjectChoiceProps) => (
  <Segment
    label="Whose balls do you chart?"
    choices={(["A", "B"] as const).map((side) => ({
      id: side,
      label: names[side],
      pressed: chosen === side,
      onPress: () => onChoose(side),
    }))}
  />
);
