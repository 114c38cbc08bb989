import type { Metadata } from "next";
import { LiveBoard } from "../../../board/live-board.tsx";
import { readTheme } from "../../../server/read-theme.ts";
import styles from "../wall.module.css";

export const metadata: Metadata = { title: "Courts" };

/** The public wall of a day: scores and order of play, whoever looks. Dark, unless this device asked for another theme. */
export default async function WallPage({ params }: { readonly params: Promise<{ readonly dayId: string }> }) {
  const theme = (await readTheme()) ?? "dark";
  return (
    <div className={styles.wall} data-theme={theme}>
      <LiveBoard dayId={(await params).dayId} view="wall" />
    </div>
  );
}
