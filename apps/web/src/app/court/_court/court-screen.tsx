"use client";
import type { BoardMirror, CourtMirror, CourtSnapshot } from "@courtloom/sync";
import Link from "next/link";
import { useMemo, useState, useSyncExternalStore } from "react";
import { AlertsProvider } from "../../../alerts/alerts-provider.tsx";
import type { OpenedAlerts } from "../../../alerts/open-alerts.ts";
import boardStyles from "../../../board/board.module.css";
import { BoardFactsProvider } from "../../../board/board-facts-provider.tsx";
import { LostBanner } from "../../../board/lost-banner.tsx";
import { REFUSAL_WORDS } from "../../../board/refusal-words.ts";
import { ScreenMessage } from "../../../board/screen-message.tsx";
import { BoardMirrorContext } from "../../../board/use-board.ts";
import { BesideScore } from "./beside-score.tsx";
import styles from "./court.module.css";
import { CourtAlerts } from "./court-alerts.tsx";
import { CourtFigures } from "./court-figures.tsx";
import { CourtFreshness } from "./court-freshness.tsx";
import type { CourtHeading } from "./court-heading.ts";
import { CourtLog } from "./court-log.tsx";
import { CourtScore } from "./court-score.tsx";
import { type ChosenFigure, shotsOf } from "./court-shots.ts";
import { knownChartists } from "./known-chartists.ts";
import { PointSize } from "./point-size.tsx";
import { ShotsPanel } from "./shots-panel.tsx";
import { useLaneNames } from "./use-lane-names.ts";
import { useMatchCourt } from "./use-match-court.ts";

function BackToBoard({ dayId }: { readonly dayId: string | null }) {
  if (dayId === null) return null;
  return (
    <Link className={boardStyles.action} href={`/board/${dayId}`}>
      All courts
    </Link>
  );
}

/** Before the opening is there: reading, not opened yet, without a connection, or refused. */
function NothingYet({ court, heading }: { readonly court: CourtSnapshot; readonly heading: CourtHeading }) {
  const { state, refusal, reachable } = court;
  const { names, dayId } = heading;
  if (state === "refused") {
    return (
      <ScreenMessage title="This court is not shown" testId="court-refused">
        <p>{refusal === null ? "" : REFUSAL_WORDS[refusal]}</p>
        <BackToBoard dayId={dayId} />
      </ScreenMessage>
    );
  }
  const isOpen = state !== "live";
  return (
    <ScreenMessage title={isOpen ? "Reading the match" : "Not opened yet"} testId="court-loading">
      {isOpen ? null : (
        <p>
          {names.A} against {names.B}. The match shows here from its opening on.
        </p>
      )}
      {reachable ? null : <p>No connection to the server. Trying again.</p>}
      <BackToBoard dayId={dayId} />
    </ScreenMessage>
  );
}

export interface CourtScreenProps {
  readonly mirror: CourtMirror;
  readonly heading: CourtHeading;
  /** The day's board, for the phone's freshness and the chartist; null for a match outside a day. */
  readonly board: BoardMirror | null;
  /** Null for a match outside a day. */
  readonly alerts: OpenedAlerts | null;
  /** The alert that somebody came for, as the text of its key; null when they did not. */
  readonly asked: string | null;
  /** Entry id of the point that somebody came for; null when they did not. */
  readonly point: string | null;
}

/** One match, live: score, figures with the points behind them, every shot drawn, and the log. Staff only. */
export function CourtScreen({ mirror, heading, board, alerts, asked, point }: CourtScreenProps) {
  const court = useSyncExternalStore(mirror.subscribe, mirror.get, mirror.get);
  const onBoard = useMatchCourt(board, heading.matchId);
  const [chosen, setChosen] = useState<ChosenFigure | null>(null);
  const shots = useMemo(() => (court.view ? shotsOf(court.view) : []), [court.view]);
  const chartist = onBoard?.tile.staff?.chartist ?? null;
  const chartists = useMemo(
    () => knownChartists(heading.chartists, court.entries, chartist),
    [heading.chartists, court.entries, chartist],
  );
  useLaneNames(heading.chartists, court.entries);
  if (court.view === undefined || court.state === "refused")
    return <NothingYet court={court} heading={heading} />;
  return (
    <AlertsProvider alerts={alerts} timeZone={heading.timeZone}>
      <main className={styles.page} data-testid="court" data-connection={court.state}>
        <CourtScore
          view={court.view}
          heading={heading}
          coaching={onBoard?.tile.staff ?? heading.coaching}
          back={<BackToBoard dayId={heading.dayId} />}
        >
          <PointSize view={court.view} />
          {board && onBoard ? (
            <BoardMirrorContext value={board}>
              <BoardFactsProvider>
                <CourtFreshness court={onBoard} timeZone={heading.timeZone} />
              </BoardFactsProvider>
            </BoardMirrorContext>
          ) : null}
        </CourtScore>
        {court.state === "stale" ? (
          <LostBanner lastHeardMs={court.lastHeardMs} timeZone={heading.timeZone} what="page" />
        ) : null}
        {alerts ? (
          <CourtAlerts
            view={court.view}
            names={heading.names}
            chosen={chosen}
            choose={setChosen}
            asked={asked}
          />
        ) : null}
        <div className={styles.columns}>
          <CourtFigures view={court.view} names={heading.names} chosen={chosen} choose={setChosen} />
          <ShotsPanel view={court.view} names={heading.names} shots={shots} chosen={chosen} />
        </div>
        <BesideScore entries={court.entries} view={court.view} names={heading.names} chartists={chartists} />
        <CourtLog
          entries={court.entries}
          view={court.view}
          names={heading.names}
          timeZone={heading.timeZone}
          chartists={chartists}
          point={point}
        />
      </main>
    </AlertsProvider>
  );
}
