import type { HistoryFilter, LeftOutWhy } from "@courtloom/api";
import type { OpponentLevel } from "@courtloom/decisions";
import { LEVEL_WORDS } from "../board/tile-words.ts";
import { sayDate } from "../desk/say-date.ts";

export const OPPONENT_WORDS: Readonly<Record<OpponentLevel, string>> = {
  similar: "similar level",
  stronger: "stronger",
  weaker: "weaker",
  notKnown: "level not known",
};

export const SURFACE_WORDS: Readonly<Record<NonNullable<HistoryFilter["surface"]>, string>> = {
  hard: "hard",
  clay: "clay",
  grass: "grass",
  artificialGrass: "artificial grass",
  carpet: "carpet",
  notKnown: "surface not known",
};

export const points = (count: number): string => (count === 1 ? "1 point" : `${count} points`);
export const matches = (count: number): string => (count === 1 ? "1 match" : `${count} matches`);

const LEFT_OUT: Readonly<Record<LeftOutWhy, string>> = {
  level: "charted in less detail than it needs",
  netCord: "decided by the net cord",
  calledOut: "with a disputed call",
};

/** "120 points charted in less detail than it needs"; why points of the filter are not in a figure. SPEC PF9. */
export const leftOutWords = ({ why, points: count }: { readonly why: LeftOutWhy; readonly points: number }) =>
  `${points(count)} ${LEFT_OUT[why]}`;

const periodWords = ({ from, to }: HistoryFilter): string => {
  if (from && to) return `${sayDate(from)} to ${sayDate(to)}`;
  if (from) return `since ${sayDate(from)}`;
  return to ? `until ${sayDate(to)}` : "all matches";
};

/** What is chosen, in words: "since Mon, 1 June 2026, stronger, clay". */
export const filterWords = (filter: HistoryFilter): string =>
  [
    periodWords(filter),
    filter.opponent ? `opponents: ${OPPONENT_WORDS[filter.opponent]}` : "",
    filter.surface ? SURFACE_WORDS[filter.surface] : "",
    filter.format ?? "",
    filter.level ? LEVEL_WORDS[filter.level] : "",
    filter.chartist ? `charted by ${filter.chartist}` : "",
  ]
    .filter(Boolean)
    .join(", ");
