import type { Channel, DepthStruck } from "@courtloom/tennis";
import type { Ball } from "./ball.ts";

/** The place that a ball was struck from: how deep, and in which channel. */
export type Spot = `${DepthStruck}.${Channel}`;

const SPOTS = {
  behindBaseline: spotsAt("behindBaseline"),
  insideBaseline: spotsAt("insideBaseline"),
  insideServiceLine: spotsAt("insideServiceLine"),
};

/** Looked up, not put together: every counted ball asks. */
export const spotOf = ({ depth, side }: Pick<Ball, "depth" | "side">): Spot => SPOTS[depth][side];

function spotsAt(depth: DepthStruck): Readonly<Record<Channel, Spot>> {
  return { left: `${depth}.left`, middle: `${depth}.middle`, right: `${depth}.right` };
}

/** A groundstroke whose choice is known: what line figures stand on. SPEC D3. */
export const isStroke = ({ kind, choice }: Pick<Ball, "kind" | "choice">): boolean =>
  kind === "groundstroke" && choice !== undefined;

export const isLineBall = (ball: Pick<Ball, "kind" | "choice">): boolean =>
  ball.kind === "groundstroke" && ball.choice === "line";

/** Cross-court or middle, drawn or touched. A ball from the middle to a side is neither kept nor a line ball. */
export const isKept = ({ choice }: Pick<Ball, "choice">): boolean =>
  choice === "kept" || choice === "cross" || choice === "middle";

/** Met after the bounce inside the service line, whatever the player made of it. SPEC D27. */
export const isShort = ({ depth, kind }: Pick<Ball, "depth" | "kind">): boolean =>
  depth === "insideServiceLine" && kind !== "volley" && kind !== "overhead";
