import type { Metadata } from "next";
import Link from "next/link";
import styles from "../../../plan/plan.module.css";
import { pageApi } from "../../../server/page-api.ts";
import { requireStaff } from "../../../server/require-staff.ts";
import shell from "../../../shell/shell.module.css";
import { TopBar } from "../../../shell/top-bar.tsx";
import { WatchEditor } from "../../../watches/watch-editor.tsx";

export const metadata: Metadata = { title: "Watches" };

/** What is watched of the academy's players in every match, and of whom something else. */
export default async function WatchesPage() {
  const { academy } = await requireStaff("/watches");
  const file = await (await pageApi()).watch.get();
  return (
    <>
      <TopBar title={academy.name} signedIn />
      <main className={`${shell.page} ${shell.narrow}`}>
        <div>
          <h1>Watches</h1>
          <p className={shell.lead}>
            A watch compares a player's count in a match with what is usual for that player, and raises an
            alert when chance alone would seldom bring as much. A match keeps the watches that held when it
            was opened.
          </p>
        </div>
        <section className={shell.part} aria-labelledby="academy">
          <h2 id="academy">For every player</h2>
          <WatchEditor file={file} playerId={null} timeZone={academy.timeZone} />
        </section>
        <section className={shell.part} aria-labelledby="players">
          <h2 id="players">Players</h2>
          {file.players.length === 0 ? (
            <p>No player of the academy yet. They come with the first match at the desk.</p>
          ) : (
            <ul className={shell.list}>
              {file.players.map(({ playerId, displayName, setting }) => (
                <li key={playerId}>
                  <Link href={`/watches/${playerId}`}>
                    {displayName}
                    <span className={styles.quiet}>
                      {setting?.choice ? "own settings" : "as the academy's"}
                    </span>
                  </Link>
                </li>
              ))}
            </ul>
          )}
        </section>
      </main>
    </>
  );
}
