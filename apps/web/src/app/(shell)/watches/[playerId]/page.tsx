import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { pageApi } from "../../../../server/page-api.ts";
import { requireStaff } from "../../../../server/require-staff.ts";
import shell from "../../../../shell/shell.module.css";
import { TopBar } from "../../../../shell/top-bar.tsx";
import { UsualList } from "../../../../watches/usual-list.tsx";
import { WatchEditor } from "../../../../watches/watch-editor.tsx";

export const metadata: Metadata = { title: "Watches of a player" };

interface WatchPageProps {
  readonly params: Promise<{ readonly playerId: string }>;
}

/** What is watched of one player, and what is usual for them now. */
export default async function WatchPage({ params }: WatchPageProps) {
  const { playerId } = await params;
  const { academy } = await requireStaff(`/watches/${playerId}`);
  const file = await (await pageApi()).watch.get();
  const player = file.players.find((each) => each.playerId === playerId);
  if (!player) notFound();
  return (
    <>
      <TopBar title={academy.name} signedIn />
      <main className={`${shell.page} ${shell.narrow}`}>
        <div>
          <h1>Watches for {player.displayName}</h1>
          <Link className={shell.link} href="/watches">
            All watches
          </Link>
        </div>
        <WatchEditor key={playerId} file={file} playerId={playerId} timeZone={academy.timeZone} />
        <section className={shell.part} aria-labelledby="usual">
          <h2 id="usual">Usual now</h2>
          <UsualList file={file} player={player} />
        </section>
      </main>
    </>
  );
}
