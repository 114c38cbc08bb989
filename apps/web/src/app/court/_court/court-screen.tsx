"use client";
import type { CourtMirror } from "@courtloom/sync";
import Link from "next/link";
import { useMemo, useState, useSyncExternalStore } from "react";
import boardStyles from "../../../board/board.module.css";
import { LostBanner } from "../../../board/lost-banner.tsx";
import { REFUSAL_WORDS } from "../../../board/refusal-words.ts";
import { ScreenMessage } from "../../../board/screen-message.tsx";
import styles from "./court.module.css";
import { CourtFigures } from "./court-figures.tsx";
import type { CourtHeading } from "./court-heading.ts";
import { CourtLog } from "./court-log.tsx";
import { CourtScore } from "./court-score.tsx";
import { type ChosenFigure, shotsOf } from "./court-shots.ts";
import { ShotsPanel } from "./shots-panel.tsx";

function BackToBoard({ dayId }: { readonly dayId: string | null }) {
  if (dayId === null) return null;
  return (
    <Link className={boardStyles.action} href={`/board/${dayId}`}>
      All courts
    </Link>
  );
}

/** One match, live: score, figures with the points behind them, every shot drawn, and the log. Staff only. */
export function CourtScreen({
  mirror,
  heading,
}: {
  readonly mirror: CourtMirror;
  readonly heading: CourtHeading;
}) {
  const court = useSyncExternalStore(mirror.subscribe, mirror.get, mirror.get);
  const [chosen, setChosen] = useState<ChosenFigure | null>(null);
  const shots = useMemo(() => (court.view ? shotsOf(court.view) : []), [court.view]);
  if (court.state === "refused") {
    return (
      <ScreenMessage title="This court is not shown" testId="court-refused">
        <p>{court.refusal === null ? "" : REFUSAL_WORDS[court.refusal]}</p>
        <BackToBoard dayId={heading.dayId} />
      </ScreenMessage>
    );
  }
  if (court.view === undefined) {
    const title = court.state === "live" ? "Not opened yet" : "Reading the match";
    return (
      <ScreenMessage title={title} testId="court-loading">
        <p>
          {court.state === "live"
            ? `${heading.names.A} against ${heading.names.B}. The match shows here from its first point.`
            : ""}
        </p>
        <p>{court.reachable ? "" : "No connection to the server. Trying again."}</p>
        <BackToBoard dayId={heading.dayId} />
      </ScreenMessage>
    );
  }
  return (
    <main className={styles.page} data-testid="court" data-connection={court.state}>
      <CourtScore view={court.view} heading={heading} back={<BackToBoard dayId={heading.dayId} />} />
      {court.state === "stale" ? (
        <LostBanner lastHeardMs={court.lastHeardMs} timeZone={heading.timeZone} what="page" />
      ) : null}
      <div className={styles.columns}>
        <CourtFigures view={court.view} names={heading.names} chosen={chosen} choose={setChosen} />
        <ShotsPanel view={court.view} names={heading.names} shots={shots} chosen={chosen} />
      </div>
      <CourtLog entries={court.entries} view={court.view} heading={heading} />
    </main>
  );
}
