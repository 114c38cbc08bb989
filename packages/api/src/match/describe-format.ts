import type { MatchFormat } from "@courtloom/tennis";
import { FORMAT_PRESETS } from "./format-presets.ts";

/** Members in one order, so that a format is the same however it was written or stored. */
const canonical = (value: unknown): string =>
  JSON.stringify(value, (_key, member: unknown) =>
    typeof member === "object" && member !== null
      ? Object.fromEntries(Object.entries(member).sort(([a], [b]) => (a < b ? -1 : 1)))
      : member,
  );

const LABELS = new Map(
  Object.values(FORMAT_PRESETS).map(({ label, format }) => [canonical(format), label] as const),
);

/** A format in a few words: a preset's name, else its sets and games. */
export const describeFormat = (format: MatchFormat): string =>
  LABELS.get(canonical(format)) ??
  `Own rules: best of ${format.sets}, ${format.fixedGames ?? format.gamesPerSet} games${format.noAd === false ? "" : ", no-ad"}`;
