"use client";
import type { BoardView } from "@courtloom/protocol";
import { type BoardMirror, createBoardMirror, createChannel } from "@courtloom/sync";
import { useEffect, useState } from "react";
import { BoardScreen } from "./board-screen.tsx";
import { ScreenMessage } from "./screen-message.tsx";

/** A day's board over the live connection, which lives as long as the page. */
export function LiveBoard({ dayId, view }: { readonly dayId: string; readonly view: BoardView }) {
  const [mirror, setMirror] = useState<BoardMirror | null>(null);
  useEffect(() => {
    const channel = createChannel();
    const next = createBoardMirror(channel, dayId, view);
    setMirror(next);
    return () => {
      next.close();
      channel.close();
    };
  }, [dayId, view]);
  if (mirror === null) return <ScreenMessage title="Reading the courts" testId="board-loading" />;
  return <BoardScreen mirror={mirror} deskHref={view === "staff" ? "/desk" : null} />;
}
