import { COURT_LINES, type SeenPoint } from "@courtloom/tennis";
import { type CourtMap, toScreen } from "./court-map.ts";

const line = (map: CourtMap, from: SeenPoint, to: SeenPoint): string => {
  const a = toScreen(map, from);
  const b = toScreen(map, to);
  return `M${a.x.toFixed(1)} ${a.y.toFixed(1)}L${b.x.toFixed(1)} ${b.y.toFixed(1)}`;
};

/** Courts are drawn for singles: the baseline ends at the singles sideline. */
const HALF_SINGLES_M = 4.115;

const seen = (map: CourtMap, x: number, y: number): SeenPoint => {
  const across = Math.max(-HALF_SINGLES_M, Math.min(HALF_SINGLES_M, x)) * 100;
  return map.seat === "behind" ? { right: across, away: y * 100 } : { right: y * 100, away: -across };
};

/** Path data of the chalk lines and of the net, which reaches a metre past the sidelines. */
export const courtPaths = (map: CourtMap): { readonly lines: string; readonly net: string } => {
  const chalk = COURT_LINES.filter(({ part }) => part !== "net" && part !== "doublesSideline");
  const lines = chalk.map(({ from, to }) => line(map, seen(map, from.x, from.y), seen(map, to.x, to.y)));
  const posts =
    map.seat === "behind"
      ? [
          { right: -503, away: 0 },
          { right: 503, away: 0 },
        ]
      : [
          { right: 0, away: -503 },
          { right: 0, away: 503 },
        ];
  const [left, right] = posts;
  return { lines: lines.join(""), net: left && right ? line(map, left, right) : "" };
};

/** Where the words "long", "wide" and "net" stand, for drawings of this size. */
export const zoneWords = (map: CourtMap): readonly { readonly word: string; readonly at: SeenPoint }[] =>
  map.seat === "behind"
    ? [
        { word: "long", at: { right: 0, away: 1_390 } },
        { word: "wide", at: { right: -540, away: 900 } },
        { word: "wide", at: { right: 540, away: 900 } },
        { word: "net", at: { right: 575, away: 0 } },
      ]
    : [
        { word: "long", at: { right: 1_375, away: 0 } },
        { word: "long", at: { right: -1_375, away: 0 } },
        { word: "wide", at: { right: -600, away: 500 } },
        { word: "wide", at: { right: 600, away: 500 } },
      ];
