import type { LandingCell, LineSpot, WonRow } from "@courtloom/api";
import { wilson } from "@courtloom/stats";
import { useEffect, useRef } from "react";
import { ActionButton } from "../form/action-button.tsx";
import { besideCount } from "../loom/rate-words.ts";
import { type Dye, Shuttle } from "../loom/shuttle.tsx";
import styles from "./line-map.module.css";
import {
  bothCounts,
  contradictionWords,
  findingWords,
  LANDING_WORDS,
  planWords,
  spotWords,
  VERDICT_TITLES,
  wonOfWords,
} from "./map-words.ts";
import { WorthMark } from "./spot-button.tsx";

interface WonProps {
  readonly label: string;
  readonly unit: string;
  readonly won: WonRow;
  readonly dye: Dye;
}

function Won({ label, unit, won, dye }: WonProps) {
  const rate = won.n === 0 ? won : { ...won, ...wilson(won.x, won.n) };
  return (
    <div className={styles.won} data-dye={dye} data-testid={`won-${dye}`}>
      <p>
        <span>{label}</span> <b>{won.n === 0 ? "none" : wonOfWords(won)}</b> {won.n === 0 ? "" : unit}{" "}
        <span className={styles.quiet}>{besideCount(rate)}</span>
      </p>
      <Shuttle what={`${label}, balls in points won`} rate={rate} dye={dye} />
    </div>
  );
}

function Landings({ landings }: { readonly landings: readonly LandingCell[] }) {
  const met = landings.filter(({ line, kept }) => line.n + kept.n > 0);
  if (met.length === 0) return null;
  return (
    <section className={styles.landings} aria-label="By the ball that was answered">
      <h4>By the ball that was answered</h4>
      <ul>
        {met.map((cell) => (
          <li key={cell.landing ?? "notKnown"}>
            <span>{LANDING_WORDS[cell.landing ?? "notKnown"]}</span>
            <span className={styles.landingFound}>
              <WorthMark verdict={cell.verdict} />
              {VERDICT_TITLES[cell.verdict]}
            </span>
            <span className={styles.quiet}>
              {cell.verdict === "cantTell" ? "" : `${findingWords(cell)} `}
              {bothCounts(cell)}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

interface SpotPanelProps {
  readonly spot: LineSpot;
  readonly showPoints: () => void;
}

/** One place opened: what was found, the two shuttles, what the plan says, and the way to the points. SPEC PF15. */
export function SpotPanel({ spot, showPoints }: SpotPanelProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  const name = spotWords(spot);
  useEffect(() => {
    if (name) heading.current?.scrollIntoView({ block: "nearest" });
  }, [name]);
  const contradiction = contradictionWords(spot);
  const { line, kept, cross, middle, lineOffPlan } = spot;
  return (
    <section className={styles.panel} aria-labelledby="spot" data-testid="spot-panel">
      <p className={styles.quiet}>{name}</p>
      <h3 id="spot" ref={heading}>
        <WorthMark verdict={spot.verdict} />
        {VERDICT_TITLES[spot.verdict]}
      </h3>
      <p className={styles.effect}>{findingWords(spot)}</p>
      {spot.verdict === "cantTell" || contradiction ? null : (
        <p className={styles.quiet}>Goes with the line; it may not be the cause.</p>
      )}
      <p className={contradiction ? styles.says : styles.quiet} data-testid="plan-says">
        {contradiction || planWords(spot.plan)}
      </p>
      <div className={styles.compare}>
        <h4>Balls in points won</h4>
        <Won label="Down the line" unit="balls" won={line} dye="line" />
        <Won label="Kept" unit="balls" won={kept} dye="ink" />
        <p className={styles.axis} aria-hidden="true">
          <span>0</span>
          <span>5 in 10</span>
          <span>10</span>
        </p>
        {cross.n + middle.n === 0 ? null : (
          <p className={styles.quiet}>
            Of the kept ones drawn: cross-court {wonOfWords(cross)}, middle {wonOfWords(middle)}.
          </p>
        )}
        {lineOffPlan.n === 0 ? null : (
          <p className={styles.quiet}>
            Line balls off plan: {wonOfWords(lineOffPlan)} judged by the plan of their day.
          </p>
        )}
      </div>
      {line.n + kept.n === 0 ? null : (
        <ActionButton label="See these balls in their points" onPress={showPoints} />
      )}
      <Landings landings={spot.landings} />
      <p className={styles.quiet}>
        The player's own record, drawn towards the academy's where there are few balls. What goes with the
        line may not be caused by it: it may be chosen on easier balls, or when late.
      </p>
    </section>
  );
}
