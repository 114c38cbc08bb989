import type { Metadata } from "next";
import { FiguresScreen } from "../../../../players/figures-screen.tsx";
import { PlayerHead } from "../../../../players/player-head.tsx";
import { readPlayer } from "../../../../players/read-player.ts";
import shell from "../../../../shell/shell.module.css";
import { TopBar } from "../../../../shell/top-bar.tsx";

export const metadata: Metadata = { title: "Player" };

interface PlayerPageProps {
  readonly params: Promise<{ readonly playerId: string }>;
}

/** One player's figures over their matches. */
export default async function PlayerPage({ params }: PlayerPageProps) {
  const { playerId } = await params;
  const { academy, player, today } = await readPlayer(playerId, "");
  return (
    <>
      <TopBar title={academy.name} signedIn />
      <main className={shell.page}>
        <PlayerHead playerId={playerId} displayName={player.displayName} place="figures" />
        <FiguresScreen playerId={playerId} playerName={player.displayName} today={today} />
      </main>
    </>
  );
}
