import { type ByPlayer, SIDES } from "@courtloom/core";
import type { MatchView } from "@courtloom/match-log";
import { scoreLine } from "@courtloom/tennis";
import { useEffect, useMemo, useRef, useState } from "react";
import { CourtDrawing } from "../../../loom/court-drawing.tsx";
import styles from "./court.module.css";
import { FIGURE_WORDS } from "./court-figures.tsx";
import {
  type ChosenFigure,
  type CourtShot,
  DIRECTION_CHOICES,
  type DirectionChoice,
  filterShots,
  type ShotFilter,
  shotsBehind,
} from "./court-shots.ts";
import { withDashes } from "./score-dashes.ts";
import { DIRECTION_WORDS, shotWords } from "./shot-words.ts";

const CHOICE_WORDS = {
  all: "All directions",
  line: "Down the line",
  cross: "Cross-court",
  middle: "Middle",
} satisfies Record<DirectionChoice, string>;

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly choices: readonly T[];
  readonly words: (choice: T) => string;
  readonly value: T;
  readonly choose: (choice: T) => void;
}

function Choice<T extends string>({ legend, choices, words, value, choose }: ChoiceProps<T>) {
  return (
    <fieldset className={styles.choice}>
      <legend className="vh">{legend}</legend>
      {choices.map((choice) => (
        <button key={choice} type="button" aria-pressed={choice === value} onClick={() => choose(choice)}>
          {words(choice)}
        </button>
      ))}
    </fieldset>
  );
}

function Filters({
  names,
  filter,
  set,
}: {
  readonly names: ByPlayer<string>;
  readonly filter: ShotFilter;
  readonly set: (filter: ShotFilter) => void;
}) {
  return (
    <div className={styles.filters}>
      <Choice
        legend="Whose shots"
        choices={["both", ...SIDES] as const}
        words={(side) => (side === "both" ? "Both players" : names[side])}
        value={filter.side}
        choose={(side) => set({ ...filter, side })}
      />
      <Choice
        legend="Direction"
        choices={DIRECTION_CHOICES}
        words={(direction) => CHOICE_WORDS[direction]}
        value={filter.direction}
        choose={(direction) => set({ ...filter, direction })}
      />
      <Choice
        legend="Result"
        choices={["any", "missed"] as const}
        words={(result) => (result === "any" ? "Any result" : "Missed")}
        value={filter.missedOnly ? "missed" : "any"}
        choose={(result) => set({ ...filter, missedOnly: result === "missed" })}
      />
    </div>
  );
}

/** The shots in words, each with the score that its point began at: what the drawing shows, to read. */
function ShotList({
  view,
  names,
  shots,
}: {
  readonly view: MatchView;
  readonly names: ByPlayer<string>;
  readonly shots: readonly CourtShot[];
}) {
  const points = useMemo(() => new Map(view.points.map((point) => [point.id, point])), [view.points]);
  return (
    <ol className={styles.shotList} data-testid="shots">
      {shots.map((shot) => {
        const before = points.get(shot.pointId)?.before;
        const score = before ? scoreLine(before, "A") : "";
        return (
          <li key={shot.key}>
            <span className={styles.at}>{withDashes(score)}</span> {shotWords(names, shot)}
          </li>
        );
      })}
    </ol>
  );
}

function Legend() {
  return (
    <ul className={styles.legend} aria-label="Threads">
      <li className={styles.legendLine}>{DIRECTION_WORDS.line}</li>
      <li className={styles.legendCross}>{DIRECTION_WORDS.cross}</li>
      <li className={styles.legendMiddle}>middle, from the middle</li>
      <li className={styles.legendMiss}>ended net, wide or long</li>
    </ul>
  );
}

/** Every charted shot on one court; with a figure chosen, the shots behind it stand out and are listed. */
export function ShotsPanel({
  view,
  names,
  shots,
  chosen,
}: {
  readonly view: MatchView;
  readonly names: ByPlayer<string>;
  readonly shots: readonly CourtShot[];
  readonly chosen: ChosenFigure | null;
}) {
  const [filter, setFilter] = useState<ShotFilter>({ side: "both", direction: "all", missedOnly: false });
  const panel = useRef<HTMLElement>(null);
  useEffect(() => {
    if (chosen) panel.current?.scrollIntoView({ block: "nearest" });
  }, [chosen]);
  const behind = chosen ? shotsBehind(shots, chosen) : null;
  const listed = behind ?? filterShots(shots, filter);
  const drawn = chosen
    ? filterShots(shots, { side: chosen.side, direction: "all", missedOnly: false })
    : listed;
  const title = chosen ? `${names[chosen.side]}, ${FIGURE_WORDS[chosen.figure]}` : "Shots";
  const missed = listed.filter((shot) => shot.missed).length;
  return (
    <section ref={panel} className={styles.shots} aria-labelledby="shots">
      <h2 id="shots">{title}</h2>
      {shots.length === 0 ? <p className={styles.none}>No shot is charted yet.</p> : null}
      {chosen || shots.length === 0 ? null : <Filters names={names} filter={filter} set={setFilter} />}
      {shots.length === 0 ? null : (
        <div className={styles.plan}>
          <div>
            <CourtDrawing
              name={`${title}: ${listed.length} shots, ${missed} missed, drawn from the striker's end`}
              shots={drawn}
              chosen={behind ? new Set(behind.map((shot) => shot.key)) : undefined}
            />
            <Legend />
          </div>
          <div>
            <p className={styles.shotCount} data-testid="shot-count">
              <b>{listed.length}</b> {listed.length === 1 ? "shot" : "shots"}, <b>{missed}</b> missed
            </p>
            {chosen ? (
              <ShotList view={view} names={names} shots={listed} />
            ) : (
              <details className={styles.list}>
                <summary>List these shots</summary>
                <ShotList view={view} names={names} shots={listed} />
              </details>
            )}
          </div>
        </div>
      )}
    </section>
  );
}
