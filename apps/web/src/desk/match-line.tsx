import type { DeskMatch } from "@courtloom/api";
import Link from "next/link";
import { CoachingSelect } from "./coaching-select.tsx";
import { BOTH_OURS, COACHING_LABELS } from "./coaching-words.ts";
import styles from "./desk.module.css";
import { STAGE_WORDS } from "./stage-words.ts";

interface MatchLineProps {
  readonly match: DeskMatch;
  readonly canChange: boolean;
}

function Coaching({ match, canChange }: MatchLineProps) {
  if (canChange && (match.stage === "waiting" || match.stage === "open")) {
    return <CoachingSelect matchId={match.matchId} mode={match.coachingMode} bothOwn={match.bothOwn} />;
  }
  return (
    <>
      <p className={styles.quiet}>Coaching: {COACHING_LABELS[match.coachingMode].toLowerCase()}</p>
      {match.bothOwn ? <p>{BOTH_OURS}</p> : null}
    </>
  );
}

/** One match in a court's order of play. */
export function MatchLine({ match, canChange }: MatchLineProps) {
  const { names, own } = match;
  return (
    <li className={styles.match} data-stage={match.stage}>
      <p className={styles.stage}>{STAGE_WORDS[match.stage]}</p>
      <p className={styles.players}>
        <span className={own.A ? styles.own : undefined}>{names.A}</span>
        <span className="vh"> against </span>
        <span className={own.B ? styles.own : undefined}>{names.B}</span>
      </p>
      <p className={styles.quiet}>{match.format}</p>
      <Coaching match={match} canChange={canChange} />
      <div className={styles.links}>
        <Link href={`/court/${match.matchId}`} prefetch={false}>
          Court page<span className="vh"> of {names.A}</span>
        </Link>
        <Link href={`/pad?match=${match.matchId}`} prefetch={false}>
          Chart it<span className="vh"> for {names.A}</span>
        </Link>
      </div>
    </li>
  );
}
