import type { Metadata } from "next";
import Link from "next/link";
import form from "../../../form/form.module.css";
import styles from "../../../players/players.module.css";
import { pageApi } from "../../../server/page-api.ts";
import { requireStaff } from "../../../server/require-staff.ts";
import shell from "../../../shell/shell.module.css";
import { TopBar } from "../../../shell/top-bar.tsx";

export const metadata: Metadata = { title: "Players" };

/** The academy's own players, each with the way to their figures and their plan. SPEC PF16. */
export default async function PlayersPage() {
  const { academy } = await requireStaff("/players");
  const { players } = await (await pageApi()).player.list({ ownOnly: true });
  return (
    <>
      <TopBar title={academy.name} signedIn />
      <main className={`${shell.page} ${shell.narrow}`}>
        <h1>Players</h1>
        {players.length === 0 ? (
          <div className={styles.state}>
            <p>No player of the academy yet. They come with the first match at the desk.</p>
            <Link className={`${form.button} ${form.primary}`} href="/desk">
              Go to the days
            </Link>
          </div>
        ) : (
          <ul className={styles.playerRows}>
            {players.map(({ playerId, displayName, squad }) => (
              <li key={playerId}>
                <Link className={styles.player} href={`/players/${playerId}`} prefetch={false}>
                  {displayName}
                  <span className={styles.quiet}>{squad ?? ""}</span>
                </Link>
                <Link href={`/players/${playerId}/line-map`} prefetch={false}>
                  Where the line pays<span className="vh"> for {displayName}</span>
                </Link>
                <Link href={`/plans/${playerId}`} prefetch={false}>
                  Plan<span className="vh"> of {displayName}</span>
                </Link>
              </li>
            ))}
          </ul>
        )}
      </main>
    </>
  );
}
