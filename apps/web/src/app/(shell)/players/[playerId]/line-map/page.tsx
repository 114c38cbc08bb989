import type { Metadata } from "next";
import { LineMapScreen } from "../../../../../players/line-map-screen.tsx";
import { PlayerHead } from "../../../../../players/player-head.tsx";
import { readPlayer } from "../../../../../players/read-player.ts";
import shell from "../../../../../shell/shell.module.css";
import { TopBar } from "../../../../../shell/top-bar.tsx";

export const metadata: Metadata = { title: "Where the line pays" };

interface LineMapPageProps {
  readonly params: Promise<{ readonly playerId: string }>;
}

/** One player's map of where points go with the line. */
export default async function LineMapPage({ params }: LineMapPageProps) {
  const { playerId } = await params;
  const { academy, player, today } = await readPlayer(playerId, "/line-map");
  return (
    <>
      <TopBar title={academy.name} signedIn />
      <main className={shell.page}>
        <PlayerHead playerId={playerId} displayName={player.displayName} place="line-map" />
        <LineMapScreen playerId={playerId} playerName={player.displayName} today={today} />
      </main>
    </>
  );
}
