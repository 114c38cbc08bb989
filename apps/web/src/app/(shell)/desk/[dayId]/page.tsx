import { FORMAT_PRESETS } from "@courtloom/api";
import type { Metadata } from "next";
import Link from "next/link";
import { COACHING_CAUTION } from "../../../../desk/coaching-words.ts";
import { IssueCodesButton } from "../../../../desk/code-actions.tsx";
import { CourtDesk } from "../../../../desk/court-desk.tsx";
import styles from "../../../../desk/desk.module.css";
import { MatchLine } from "../../../../desk/match-line.tsx";
import { readDesk } from "../../../../desk/read-desk.ts";
import { sayDate } from "../../../../desk/say-date.ts";
import { TrustHint } from "../../../../desk/trust-hint.tsx";
import { WallCode } from "../../../../desk/wall-code.tsx";
import { readTrustEnv } from "../../../../env.ts";
import form from "../../../../form/form.module.css";
import { requireStaff } from "../../../../server/require-staff.ts";
import { services } from "../../../../server/services.ts";
import shell from "../../../../shell/shell.module.css";
import { TopBar } from "../../../../shell/top-bar.tsx";

export const metadata: Metadata = { title: "Desk" };

const FORMATS = Object.entries(FORMAT_PRESETS).map(([preset, { label }]) => ({ preset, label }));

/** The desk of a day: order of play, who may chart, codes, and what coaching is allowed. */
export default async function DeskPage({ params }: { readonly params: Promise<{ readonly dayId: string }> }) {
  const { dayId } = await params;
  const { member, academy } = await requireStaff(`/desk/${dayId}`);
  const { desk, codeOf, phonesOf, players, isMissingCodes } = await readDesk(dayId);
  const canChange = member.role === "director";
  const { env } = services();
  const publicUrl = env.publicUrls[0] ?? env.publicUrl;
  const wallCode = codeOf(null);
  const trust = readTrustEnv();
  return (
    <>
      <TopBar title={academy.name} day={desk.day.name} signedIn />
      <main className={shell.page}>
        <div>
          <h1>{desk.day.name}</h1>
          <p className={shell.lead}>
            <time dateTime={desk.day.date}>{sayDate(desk.day.date)}</time>
          </p>
        </div>
        <nav className={styles.ways} aria-label="This day">
          <Link className={`${form.button} ${form.primary}`} href={`/board/${dayId}`}>
            Board
          </Link>
          <Link className={form.button} href={`/wall/${dayId}`}>
            Wall
          </Link>
          <Link className={form.button} href="/desk">
            All days
          </Link>
        </nav>
        <section className={shell.part} aria-labelledby="codes">
          <h2 id="codes">Codes</h2>
          <p>
            With a court code anybody can chart that court's matches today, without an account. With the wall
            code a screen shows the scores. All end four hours after midnight.
          </p>
          {canChange && isMissingCodes ? <IssueCodesButton dayId={dayId} /> : null}
          {trust ? <TrustHint page={trust.page} /> : null}
          {wallCode ? <WallCode code={wallCode} publicUrl={publicUrl} canChange={canChange} /> : null}
        </section>
        <section className={shell.part} aria-labelledby="order">
          <h2 id="order">Order of play</h2>
          <p className={styles.caution}>{COACHING_CAUTION}</p>
          <div className={styles.courts}>
            {desk.courts.map((court) => (
              <CourtDesk
                key={court.courtId}
                dayId={dayId}
                court={court}
                code={codeOf(court.courtId)}
                phones={phonesOf(court.courtId)}
                players={players}
                formats={FORMATS}
                publicUrl={publicUrl}
                canChange={canChange}
              />
            ))}
          </div>
        </section>
        {desk.unplaced.length > 0 ? (
          <section className={shell.part} aria-labelledby="unplaced">
            <h2 id="unplaced">Without a court</h2>
            <ol className={styles.order}>
              {desk.unplaced.map((match) => (
                <MatchLine key={match.matchId} match={match} canChange={canChange} />
              ))}
            </ol>
          </section>
        ) : null}
      </main>
    </>
  );
}
