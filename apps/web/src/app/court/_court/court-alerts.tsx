import type { ByPlayer } from "@courtloom/core";
import { type WatchView, watchesOf } from "@courtloom/decisions";
import type { MatchView, Rate } from "@courtloom/match-log";
import { wilson } from "@courtloom/stats";
import { useEffect, useMemo, useRef } from "react";
import { AlertItem } from "../../../alerts/alert-item.tsx";
import { AlertsState } from "../../../alerts/alerts-state.tsx";
import { NoticeSwitchesPart } from "../../../alerts/notices/notice-switches-part.tsx";
import { RATE_NAMES } from "../../../alerts/rate-names.ts";
import { useAlert, useRankedAlerts } from "../../../alerts/use-alerts.ts";
import { Mark } from "../../../loom/mark.tsx";
import { countWords } from "../../../loom/rate-words.ts";
import { Shuttle } from "../../../loom/shuttle.tsx";
import { AttemptBeads, AttemptList } from "./attempt-list.tsx";
import { attemptRun } from "./attempt-run.ts";
import styles from "./court-alerts.module.css";
import { type ChosenFigure, FIGURE_NAMES } from "./court-shots.ts";

export interface CourtAlertsProps {
  readonly view: MatchView;
  readonly names: ByPlayer<string>;
  readonly chosen: ChosenFigure | null;
  readonly choose: (figure: ChosenFigure | null) => void;
  /** The alert that somebody came for, as the text of its key; null when they did not. */
  readonly asked: string | null;
}

interface ProofProps extends Omit<CourtAlertsProps, "asked"> {
  readonly watch: WatchView;
  readonly isAsked: boolean;
}

/** The figure of the page that has the same shots behind it; undefined where none has. */
const figureOf = (rate: Rate) => FIGURE_NAMES.find((name) => name === rate);

/** Usual against today, and every attempt behind the alert. SPEC rule AS24. */
function Proof({ view, names, watch, chosen, choose, isAsked }: ProofProps) {
  const { side, rate, match } = watch;
  const attempts = useMemo(() => attemptRun(view, watch), [view, watch]);
  const figure = figureOf(rate);
  const isChosen = chosen !== null && chosen.side === side && chosen.figure === figure;
  const counted = RATE_NAMES[rate].counted;
  return (
    <div className={styles.proof}>
      <Shuttle
        what={`${names[side]}, ${counted}`}
        rate={{ ...match, ...wilson(match.x, match.n) }}
        usual={view.opened.usualRates?.[side][rate]}
      />
      <AttemptBeads attempts={attempts} />
      <details open={isAsked} className={styles.details}>
        <summary>
          {attempts.length} in order, the oldest first<span className="vh">: {counted}</span>
        </summary>
        <AttemptList rate={rate} attempts={attempts} />
      </details>
      {figure === undefined ? null : (
        <button
          type="button"
          className={styles.press}
          aria-pressed={isChosen}
          onClick={() => choose(isChosen ? null : { side, figure })}
        >
          {isChosen ? "Showing its shots" : "Show its shots"}
        </button>
      )}
    </div>
  );
}

/** An alert of this match; what it stands on is as the log is now, so that a withdrawn one has nothing to open. */
function CourtAlert({
  text,
  asked,
  watches,
  ...rest
}: CourtAlertsProps & { readonly text: string; readonly watches: readonly WatchView[] }) {
  const { line } = useAlert(text);
  const place = useRef<HTMLLIElement>(null);
  const { choose } = rest;
  const askedFor = text === asked && line ? figureOf(line.key.rate) : undefined;
  const side = line?.side;
  useEffect(() => {
    if (text !== asked || side === undefined) return;
    if (askedFor) choose({ side, figure: askedFor });
    // After the shots have come into sight, which choosing them does.
    const frame = requestAnimationFrame(() => place.current?.scrollIntoView({ block: "start" }));
    return () => cancelAnimationFrame(frame);
  }, [text, asked, side, askedFor, choose]);
  const watch = watches.find(({ side, rate }) => side === line?.side && rate === line.key.rate);
  return (
    <li ref={place}>
      <AlertItem text={text} onCourtPage>
        {watch && line?.state !== "withdrawn" ? (
          <Proof {...rest} watch={watch} isAsked={text === asked} />
        ) : null}
      </AlertItem>
    </li>
  );
}

/** The evidence is worth a look; nobody is told. */
function Noticed({ watch, names }: { readonly watch: WatchView; readonly names: ByPlayer<string> }) {
  return (
    <li className={styles.noticed} data-testid="noticed">
      <Mark name="noticed" />
      <p>
        <b>Noticed.</b> {names[watch.side]}, {countWords(watch.match)} {RATE_NAMES[watch.rate].counted}.
        Nobody is told of this.
      </p>
    </li>
  );
}

/** What is watched here, where there is nothing to say of it. */
function Watched({
  watches,
  names,
}: {
  readonly watches: readonly WatchView[];
  readonly names: ByPlayer<string>;
}) {
  if (watches.length === 0)
    return <p data-testid="no-watch">No alert, and nothing is watched: the match opened without a watch.</p>;
  const list = watches.map(({ side, rate }) => `${names[side]}, ${RATE_NAMES[rate].counted}`).join("; ");
  return <p data-testid="no-alert">No alert in this match. Watched: {list}.</p>;
}

/** Between two own players alerts are on the director's board alone, whoever looks. SPEC rule AS25. */
function BothOwn() {
  return (
    <p data-testid="both-own">
      Both ours: speak to neither. Alerts of this match are on the director's board.
    </p>
  );
}

/** What was raised or noticed here, and where there is neither, what is watched. */
function MatchAlerts(props: CourtAlertsProps) {
  const { view, names } = props;
  const texts = useRankedAlerts(view.matchId);
  const watches = useMemo(() => watchesOf(view), [view]);
  const noticed = watches.filter(({ state }) => state === "noticed");
  return (
    <>
      <AlertsState />
      {texts.length === 0 && noticed.length === 0 ? <Watched watches={watches} names={names} /> : null}
      <ul className={styles.list}>
        {texts.map((text) => (
          <CourtAlert key={text} {...props} text={text} watches={watches} />
        ))}
        {noticed.map((watch) => (
          <Noticed key={`${watch.side} ${watch.rate}`} watch={watch} names={names} />
        ))}
      </ul>
    </>
  );
}

/** The match's alerts with all that can be done about them, what was noticed, and what is watched. SPEC rules AS17, AS24. */
export function CourtAlerts(props: CourtAlertsProps) {
  const { A, B } = props.view.opened.players;
  return (
    <section className={styles.alerts} aria-labelledby="alerts" data-testid="court-alerts">
      <h2 id="alerts">Alerts</h2>
      {A.own && B.own ? <BothOwn /> : <MatchAlerts {...props} />}
      <NoticeSwitchesPart />
    </section>
  );
}
