import { useState, useSyncExternalStore } from "react";
import { StaffWords } from "./court-words/staff-words.tsx";
import type { Courtside, CourtsideMatch } from "./courtside.ts";
import { HandedMoment } from "./hand-over/handed-moment.tsx";
import { useHandedLead } from "./hand-over/use-handed-lead.ts";
import { usePartsOnPlainHttp } from "./later/use-parts-on-plain-http.ts";
import { LeadTaken } from "./lead-taken.tsx";
import { MatchScreen } from "./match-screen.tsx";
import { Notices } from "./notices.tsx";
import { CopyGone } from "./offline/copy-gone.tsx";
import { OfflineNotices } from "./offline/offline-notices.tsx";
import { loadNewestShell } from "./offline/shell.ts";
import { useKeptStorage } from "./offline/use-kept-storage.ts";
import { useOpenMark } from "./offline/use-open-mark.ts";
import styles from "./pad.module.css";
import { PLAIN_HTTP_NOTICE, padNotices } from "./pad-notices.ts";
import type { PadSession } from "./pad-session.ts";
import type { PadSettings } from "./pad-settings.ts";
import type { RefusalHelp } from "./refusal-words.ts";
import { BesideScore } from "./second/beside-score.tsx";
import { SecondBar } from "./second/second-bar.tsx";
import { useCameBack } from "./second/use-came-back.ts";
import { StatusBar } from "./status-bar.tsx";
import { useLeader } from "./use-leader.ts";

interface PadMatchProps {
  readonly session: PadSession;
  readonly match: CourtsideMatch;
  /** From the code that this person just entered. */
  readonly handedOver: Courtside["handedOver"];
  readonly settings: PadSettings;
  readonly onSettings: (settings: PadSettings) => void;
  readonly onEnterCode: () => void;
  readonly onLeave: () => void;
}

/** One match on the pad: the status bar, what is wrong if anything, and the screen for this moment. */
export const PadMatch = (props: PadMatchProps) => {
  const { session, match, settings, onSettings, onEnterCode, onLeave } = props;
  usePartsOnPlainHttp();
  const snapshot = useSyncExternalStore(session.subscribe, session.get, session.get);
  const [more, setMore] = useState(false);
  const [isBetween, setBetween] = useState(true);
  const plainHttp = !window.isSecureContext && !settings.knowsPlainHttp;
  useKeptStorage(snapshot.charts);
  useOpenMark(snapshot.view !== undefined);
  const leader = useLeader(snapshot.status.leader);
  const { view, record, status, level } = snapshot;
  // Nobody else leads: it is this phone's own lane, whose copy is gone.
  const ownCopyGone = status.leader?.ownPhone === true && snapshot.sentPoints !== undefined;
  const back = useCameBack(snapshot);
  const handedBy = useHandedLead(session, snapshot, props.handedOver);
  const help = (wanted: RefusalHelp) => {
    if (wanted === "tryAgain") session.tryAgain();
    if (wanted === "enterCode") onEnterCode();
    if (wanted === "reload") void loadNewestShell();
  };
  return (
    <main
      className={`${styles.pad} ${styles.buttons}`}
      data-testid="pad"
      data-level={level}
      data-hand={settings.hand}
      data-signal={status.signal}
    >
      <h1 className={styles.hidden}>
        Pad, {match.names.A} and {match.names.B}
      </h1>
      <StatusBar
        courtName={record.courtName}
        chartist={record.chartist}
        level={level}
        unsent={status.unsent + snapshot.otherUnsent}
        onMore={() => setMore(true)}
      />
      <SecondBar snapshot={snapshot} />
      <div className={styles.notices}>
        {plainHttp && (
          <Notices
            notices={[PLAIN_HTTP_NOTICE]}
            onHelp={help}
            onDismiss={() => onSettings({ ...settings, knowsPlainHttp: true })}
          />
        )}
        <Notices notices={padNotices(snapshot)} onHelp={help} />
        <OfflineNotices
          clockAheadMinutes={status.clockAheadMinutes}
          sentPoints={ownCopyGone ? undefined : snapshot.sentPoints}
        />
        {record.staff && view && !leader && handedBy === undefined && (
          <StaffWords
            {...{ matchId: match.matchId, score: view.score, hasPoints: view.points.length > 0, isBetween }}
            hasSignal={status.signal === "open"}
          />
        )}
      </div>
      {handedBy !== undefined ? (
        <HandedMoment by={handedBy} />
      ) : ownCopyGone ? (
        <CopyGone
          match={match}
          view={view}
          sentPoints={snapshot.sentPoints ?? 0}
          hasSignal={status.signal !== "noSignal"}
          onGoOn={session.takeOver}
          onLeave={onLeave}
        />
      ) : leader ? (
        <LeadTaken
          match={match}
          view={view}
          facts={{
            ...{ leader, led: record.epoch > 0, unsent: status.unsent },
            hasSignal: status.signal !== "noSignal",
            ...(back ? { back } : {}),
          }}
          onTakeOver={session.takeOver}
          onSecond={view && !view.score.over ? session.chartSecond : undefined}
          onLeave={onLeave}
        />
      ) : view && (record.epoch > 0 || record.second) ? (
        <BesideScore session={session} snapshot={snapshot} match={match}>
          <MatchScreen
            {...{ session, snapshot, view, match, settings, more, onSettings, onLeave }}
            onMore={setMore}
            onBetween={setBetween}
          />
        </BesideScore>
      ) : (
        <Waiting signal={status.signal} onLeave={onLeave} />
      )}
    </main>
  );
};

const WAITING_WORDS = {
  connecting: "Connecting to the court…",
  open: "Connecting to the court…",
  noSignal:
    "No signal, and this phone does not know this match yet. Move to where there is signal once; then it works without.",
  refused: "Nothing to chart here yet.",
} as const;

const Waiting = ({
  signal,
  onLeave,
}: {
  readonly signal: keyof typeof WAITING_WORDS;
  readonly onLeave: () => void;
}) => (
  <section className={styles.sheet} aria-busy={signal === "connecting"}>
    <p>{WAITING_WORDS[signal]}</p>
    <button type="button" className={styles.secondary} onClick={onLeave}>
      Back
    </button>
  </section>
);
