import type { ByPlayer } from "@courtloom/core";
import type { Ask } from "@courtloom/match-log";
import { useEffect, useRef } from "react";
import styles from "./asks.module.css";
import { openAsks } from "./draft-asks.ts";
import type { DraftEvent, Opened } from "./draft-reducer.ts";
import { MiniCourt } from "./mini-court.tsx";
import type { PointDraft, PointFrame } from "./point-draft.ts";
import { strokeOf } from "./read-draft.ts";
import { sayShort } from "./say-stroke.ts";

interface ChipsProps {
  readonly names: ByPlayer<string>;
  readonly draft: PointDraft;
  readonly frame: PointFrame;
  readonly opened: Opened | undefined;
  /** What is asked of each ball. */
  readonly asks: readonly (readonly Ask[])[];
  readonly send: (event: DraftEvent) => void;
}

const serveWords = ({ serve, faults }: PointDraft): string => {
  if (serve === "firstIn") return "first in";
  if (serve === "secondIn") return "second in";
  return faults === 1 ? "fault" : "serve?";
};

const saysUnanswered = (count: number): string => (count === 0 ? "" : `, ${count} not answered`);

/** The balls of the point in order; a touch opens one for mending. */
export const Chips = ({ names, draft, frame, opened, asks, send }: ChipsProps) => {
  const row = useRef<HTMLOListElement>(null);
  const count = draft.shots.length;
  useEffect(() => {
    if (count > 0) row.current?.scrollTo({ left: row.current.scrollWidth });
  }, [count]);
  const press = (what: Opened) => () => send(opened === what ? { type: "closed" } : { type: "opened", what });
  const balls = draft.shots.map((shot, place) => ({ id: `ball ${place}`, shot, place }));
  return (
    <ol className={styles.chips} ref={row} aria-label="Balls of this point">
      <li>
        <button
          type="button"
          aria-pressed={opened === "serve"}
          onClick={press("serve")}
          data-testid="chip-serve"
        >
          <span>
            <b>{names[frame.server]}</b> {serveWords(draft)}
          </span>
        </button>
      </li>
      {balls.map(({ id, shot, place }) => {
        const stroke = strokeOf(shot, frame);
        const unanswered = openAsks(shot, asks[place] ?? []);
        return (
          <li key={id}>
            <button
              type="button"
              aria-pressed={opened === place}
              aria-label={`Ball ${place + 1}: ${names[shot.striker]}, ${sayShort(stroke)}${saysUnanswered(unanswered)}. Mend`}
              onClick={press(place)}
              data-testid={`chip-${place}`}
            >
              <MiniCourt seat={frame.seat} shot={shot} direction={stroke?.direction} />
              <span>
                <b>{names[shot.striker]}</b> {sayShort(stroke)}
                {unanswered > 0 && <span className={styles.unanswered}> {unanswered}?</span>}
              </span>
            </button>
          </li>
        );
      })}
    </ol>
  );
};
