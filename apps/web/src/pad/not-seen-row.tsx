import type { ByPlayer, Side } from "@courtloom/core";
import { Segment } from "./segment.tsx";

interface NotSeenRowProps {
  readonly names: ByPlayer<string>;
  readonly onPoint: (winner: Side) => void;
}

/** When behind: one touch records who won, and nothing else. */
export const NotSeenRow = ({ names, onPoint }: NotSeenRowProps) => (
  <Segment
    label="Point, not seen"
    choices={(["A", "B"] as const).map((side) => ({
      id: side,
      label: `Not seen: ${names[side]}`,
      action: side === "A" ? "pointA" : "pointB",
      onPress: () => onPoint(side),
    }))}
  />
);
