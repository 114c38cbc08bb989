import type { DeskCourt } from "@courtloom/api";
import { AddMatchForm, type FormatChoice } from "./add-match-form.tsx";
import { CodeCard, type ShownCode, type ShownPhone } from "./code-card.tsx";
import styles from "./desk.module.css";
import { MatchLine } from "./match-line.tsx";
import type { ListedPlayer } from "./name-player.ts";

interface CourtDeskProps {
  readonly dayId: string;
  readonly court: DeskCourt;
  readonly code: ShownCode | undefined;
  readonly phones: readonly ShownPhone[];
  readonly players: readonly ListedPlayer[];
  readonly formats: readonly FormatChoice[];
  readonly publicUrl: string;
  readonly canChange: boolean;
}

/** One court at the desk: its order of play and its code. */
export function CourtDesk(props: CourtDeskProps) {
  const { dayId, court, code, phones, players, formats, publicUrl, canChange } = props;
  return (
    <section className={styles.court} aria-labelledby={`court-${court.no}`}>
      <h3 id={`court-${court.no}`}>
        {court.name === `Court ${court.no}` ? (
          <>
            <span className="vh">Court </span>
            {court.no}
          </>
        ) : (
          `${court.no} ${court.name}`
        )}
      </h3>
      {court.matches.length === 0 ? (
        <p className={styles.quiet}>No match yet.</p>
      ) : (
        <ol className={styles.order}>
          {court.matches.map((match) => (
            <MatchLine key={match.matchId} match={match} canChange={canChange} />
          ))}
        </ol>
      )}
      {canChange ? (
        <AddMatchForm
          dayId={dayId}
          courtId={court.courtId}
          courtName={court.name}
          players={players}
          formats={formats}
        />
      ) : null}
      {code ? (
        <CodeCard
          courtName={court.name}
          code={code}
          phones={phones}
          publicUrl={publicUrl}
          canChange={canChange}
        />
      ) : (
        <p className={styles.quiet}>No court code yet.</p>
      )}
    </section>
  );
}
