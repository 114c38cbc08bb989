import type { EntryBody } from "@courtloom/match-log";
import type { EndSeen } from "@courtloom/tennis";
import { useState, useSyncExternalStore } from "react";
import { Charting } from "./charting.tsx";
import type { CourtsideMatch } from "./courtside.ts";
import { LeadTaken } from "./lead-taken.tsx";
import { Notices } from "./notices.tsx";
import styles from "./pad.module.css";
import { PLAIN_HTTP_NOTICE, padNotices } from "./pad-notices.ts";
import type { PadSession } from "./pad-session.ts";
import type { PadSettings } from "./pad-settings.ts";
import type { RefusalHelp } from "./refusal-words.ts";
import { seatOf, shownEndOfA } from "./shown-ends.ts";
import { type StartAnswers, StartSheet } from "./start-sheet.tsx";
import { StatusBar } from "./status-bar.tsx";
import { useLeader } from "./use-leader.ts";
import { useWakeLock } from "./use-wake-lock.ts";

interface PadMatchProps {
  readonly session: PadSession;
  readonly match: CourtsideMatch;
  readonly settings: PadSettings;
  readonly onSettings: (settings: PadSettings) => void;
  readonly onEnterCode: () => void;
  readonly onLeave: () => void;
}

/** One match on the pad: the status bar, what is wrong if anything, and the screen for this moment. */
export const PadMatch = (props: PadMatchProps) => {
  const { session, match, settings, onSettings, onEnterCode, onLeave } = props;
  const snapshot = useSyncExternalStore(session.subscribe, session.get, session.get);
  const [more, setMore] = useState(false);
  const [plainHttp, setPlainHttp] = useState(() => !window.isSecureContext);
  useWakeLock();
  const leader = useLeader(match, snapshot.status.refusal);
  const { view, record, status, level } = snapshot;
  // A lane that the server never opened does not make the score; one that lost the lead goes on as second.
  const taken = status.refusal === "lead_taken" && record.epoch === 0;
  const help = (wanted: RefusalHelp) => {
    if (wanted === "tryAgain") session.tryAgain();
    if (wanted === "enterCode") onEnterCode();
    if (wanted === "reload") location.reload();
  };
  return (
    <main
      className={`${styles.pad} ${styles.buttons}`}
      data-testid="pad"
      data-level={level}
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
      {plainHttp && (
        <Notices notices={[PLAIN_HTTP_NOTICE]} onHelp={help} onDismiss={() => setPlainHttp(false)} />
      )}
      {!taken && <Notices notices={padNotices(snapshot, leader)} onHelp={help} />}
      {taken ? (
        <LeadTaken
          match={match}
          view={view}
          leader={leader}
          unsent={status.unsent}
          onTryAgain={session.tryAgain}
          onLeave={onLeave}
        />
      ) : view && record.epoch > 0 ? (
        <MatchScreen
          {...{ session, snapshot, view, match, settings, more, onSettings, onLeave }}
          onMore={setMore}
        />
      ) : (
        <Waiting signal={status.signal} onLeave={onLeave} />
      )}
    </main>
  );
};

type MatchScreenProps = Omit<Parameters<typeof Charting>[0], "frame">;

/** Asks who is where until that is known, and charts from then on. */
const MatchScreen = (props: MatchScreenProps) => {
  const { session, view, match, settings, onSettings } = props;
  const [asksEnds, setAsksEnds] = useState(false);
  const endOfA = shownEndOfA(settings.seat, view.endOfA, view.subjects);
  const fresh = view.points.length === 0 && view.endOfA === undefined;
  const [started, setStarted] = useState(false);
  const chooseSeat = (next: PadSettings) => {
    // While the drawing kept the player near, nobody followed the true ends.
    if (settings.seat === "alwaysNear" && next.seat !== "alwaysNear") setAsksEnds(true);
    onSettings(next);
  };
  const start = async ({ firstServer, atFirstEnd }: StartAnswers) => {
    const facts: EntryBody[] = [];
    if (firstServer && firstServer !== view.score.server)
      facts.push({ kind: "ServerStated", to: firstServer, slip: "chartist" });
    const first: EndSeen = settings.seat === "side" ? "left" : "near";
    const second: EndSeen = settings.seat === "side" ? "right" : "far";
    if (atFirstEnd) facts.push({ kind: "EndsStated", endOfA: atFirstEnd === "A" ? first : second });
    for (const fact of facts) await session.chart(fact);
    setAsksEnds(false);
    setStarted(true);
  };
  const unknown = endOfA === undefined || asksEnds || (fresh && !started);
  if (unknown && !view.score.over)
    return (
      <StartSheet
        names={match.names}
        seat={settings.seat}
        asksServer={view.points.length === 0}
        onSeat={(seat) => chooseSeat({ ...settings, seat })}
        onStart={(answers) => void start(answers)}
      />
    );
  const frame = {
    server: view.score.server ?? "A",
    seat: seatOf(settings.seat),
    endOfA: endOfA ?? "near",
  };
  return <Charting {...props} frame={frame} onSettings={chooseSeat} />;
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
