import type { ByPlayer } from "@courtloom/core";
import { DESK_LANE, type LoggedEntry, type MatchView, SECOND_EPOCH } from "@courtloom/match-log";
import { scoreLine } from "@courtloom/tennis";
import { SET_ASIDE_WORDS } from "../../../match-words/set-aside-words.ts";
import { entryWords } from "./entry-words.ts";
import { withDashes } from "./score-dashes.ts";

/** One entry of the log as a person reads it. */
export interface LogLine {
  readonly pos: number;
  readonly id: string;
  readonly wallMs: number;
  readonly who: string;
  readonly words: string;
  /** The score after it, seen from side A; null where it moved none. */
  readonly score: string | null;
  /** What became of it: corrected, taken back, set aside. */
  readonly note: string | null;
  /** It no longer counts. */
  readonly struck: boolean;
}

interface Fate {
  readonly note: string;
  readonly struck: boolean;
}

/** What later entries did to earlier ones, by id. A correction that was itself set aside did nothing. */
const fatesOf = (
  entries: readonly LoggedEntry[],
  setAside: ReadonlySet<number>,
): ReadonlyMap<string, Fate> => {
  const fates = new Map<string, Fate>();
  const corrected = new Map<string, string>();
  for (const { pos, entry } of entries) {
    if (setAside.has(pos)) continue;
    const { body } = entry;
    if (body.kind === "EntryVoided") fates.set(body.target, { note: `Taken back by ${pos}`, struck: true });
    if (body.kind === "EntryRestored") fates.set(body.target, { note: `Put back by ${pos}`, struck: false });
    if (body.kind === "EntryAmended") {
      fates.set(body.target, { note: `Corrected by ${pos}`, struck: false });
      corrected.set(entry.id, body.target);
    }
    // What took a correction back says so at the entry that it was about, too.
    const about = "target" in body ? corrected.get(body.target) : undefined;
    if (about !== undefined && body.kind !== "EntryAmended") {
      const done = body.kind === "EntryVoided" ? "taken back" : "put back";
      fates.set(about, { note: `Correction ${done} by ${pos}`, struck: false });
    }
  }
  return fates;
};

export interface LogReading {
  readonly names: ByPlayer<string>;
  readonly chartists: Readonly<Record<string, string>>;
}

/** Taking over is noted for whoever took over, though the server wrote it down. */
const whoWrote = ({ laneId, entry: { body } }: LoggedEntry, chartists: LogReading["chartists"]): string => {
  const lane = body.kind === "LeadTaken" ? body.laneId : laneId;
  return lane === DESK_LANE ? "Desk" : (chartists[lane] ?? "Another phone");
};

/** What an entry that stands has to say for itself: beside the score, or whose saying it took over. */
const noteOf = ({ epoch }: LoggedEntry, takenFrom: string | undefined): string | null => {
  if (takenFrom !== undefined) return `As ${takenFrom} charted it.`;
  return epoch === SECOND_EPOCH ? "Second: beside the score." : null;
};

/** The whole log in order, each entry with what became of it. SPEC rule BD13. */
export const logLines = (
  entries: readonly LoggedEntry[],
  view: MatchView,
  { names, chartists }: LogReading,
): readonly LogLine[] => {
  const aside = new Map(view.setAside.map(({ pos, reason }) => [pos, reason]));
  const fates = fatesOf(entries, new Set(aside.keys()));
  const scores = new Map(view.points.map((point) => [point.id, withDashes(scoreLine(point.after, "A"))]));
  const places = new Map(entries.map(({ pos, entry }) => [entry.id, pos]));
  return entries.map((logged) => {
    const { pos, entry } = logged;
    const { body } = entry;
    const source = "from" in body && body.from !== undefined ? places.get(body.from) : undefined;
    const taken = source === undefined ? undefined : entries[source - 1];
    const about = "target" in body ? body.target : "before" in body ? body.before : undefined;
    const target = about === undefined ? undefined : places.get(about);
    const reason = aside.get(pos);
    const fate = fates.get(entry.id);
    return {
      pos,
      id: entry.id,
      wallMs: entry.wallMs,
      who: whoWrote(logged, chartists),
      words: entryWords(names, body, target === undefined ? "an entry that is not here" : `entry ${target}`),
      score: scores.get(entry.id) ?? null,
      note: reason
        ? `Set aside: ${SET_ASIDE_WORDS[reason]}. It is kept here.`
        : (fate?.note ?? noteOf(logged, taken && whoWrote(taken, chartists))),
      struck: reason !== undefined || (fate?.struck ?? false),
    };
  });
};
