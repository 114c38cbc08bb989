import { pct, signed } from "../bar.ts";
import { Z95 } from "../clustered-mean.ts";
import { PASTS } from "./condition.ts";
import type { Series } from "./condition-result.ts";
import { REFERENCE } from "./reference.ts";
import type { OperatingFigures } from "./run-operating.ts";

type Row = OperatingFigures["conditions"][number];

const hundredths = (share: number): string => (100 * share).toFixed(1);

const interval = ({ raised: { mean, se } }: Series): string => {
  const half = Z95 * se;
  return `${hundredths(mean)} (${hundredths(Math.max(0, mean - half))}–${hundredths(mean + half)})`;
};

const found = (series: Series | undefined, wanted: number): string =>
  series
    ? `${hundredths(series.raised.mean).padStart(6)}${(100 * wanted).toFixed(0).padStart(6)}${signed(100 * (series.raised.mean - wanted)).padStart(6)}`
    : "";

const tableRow = ({ planned: { condition }, series: [well, twice, thrice] }: Row): string => {
  const { falseAlarms, high, found: wanted } = REFERENCE[condition.past];
  if (!well?.exact) return "";
  const false_ = `${interval(well).padEnd(16)}${hundredths(well.exact.mean).padStart(6)}${hundredths(falseAlarms).padStart(6)}`;
  const highest = `${hundredths(well.exact.high).padStart(8)}${hundredths(high).padStart(6)}`;
  return `${String(condition.past).padStart(4)}  ${false_}  ${highest}  ${found(twice, wanted[0])}  ${found(thrice, wanted[1])}`;
};

const sizes = ({ planned: { players, matchesEach } }: Row): string =>
  `${players.toLocaleString("en")} players, ${(players * matchesEach).toLocaleString("en")} matches`;

const byPast = (rows: readonly Row[], says: (row: Row) => string): string =>
  PASTS.flatMap((past) => {
    const row = rows.find(({ planned }) => planned.condition.past === past);
    return row ? [says(row)] : [];
  }).join("   ");

const rateOf = ({ planned, series: [well] }: Row): string =>
  well ? `${planned.condition.past} past: ${interval(well)}` : "";

/** What is printed of a run of the watches, line by line; shares in points per hundred. */
export const operatingTable = ({ conditions, clearing }: OperatingFigures): readonly string[] => {
  const table = conditions.filter(({ series }) => series.length > 1);
  const used = conditions.filter(({ planned }) => planned.condition.attempts === "own");
  const split = (watches: number) =>
    conditions.filter(({ planned: { condition } }) => {
      return condition.attempts === "thirty" && condition.watches === watches;
    });
  return [
    "True rates Beta(5, 15), day-to-day spread 60, past matches of 8 to 40 attempts, thirty attempts a match,",
    `one false alarm in twenty player-matches. ${table[0] ? sizes(table[0]) : ""} of each kind. The reference in ref.`,
    "",
    "past  false alarms      exact   ref   90th pct   ref   odds×2   ref  diff  odds×3   ref  diff",
    ...table.map(tableRow),
    "",
    "False alarms in a player-match, the error rate split over independent watches:",
    ...[1, 2, 4].map((watches) => `  ${watches} a player   ${byPast(split(watches), rateOf)}`),
    "False alarms with matches and horizon as the past has them:",
    `               ${byPast(used, rateOf)}`,
    "Matches with a second alert of the same watch, odds three times as high:",
    `               ${byPast(table, ({ planned, series }) => `${planned.condition.past} past: ${pct(series[2]?.again ?? Number.NaN)}`)}`,
    "Within fifteen attempts after a raise, the usual rate known:",
    ...clearing.map(
      ({ rate, cleared, wrongly, again }) =>
        `  usual rate ${rate}: eased ${pct(cleared, 0)} when all is well, ${pct(wrongly, 0)} at 2.5 times the odds; raised again ${pct(again)} when all is well`,
    ),
  ];
};
