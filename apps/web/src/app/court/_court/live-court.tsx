"use client";
import {
  type BoardMirror,
  type CourtMirror,
  createBoardMirror,
  createChannel,
  createCourtMirror,
} from "@courtloom/sync";
import { useEffect, useState } from "react";
import { ScreenMessage } from "../../../board/screen-message.tsx";
import type { CourtHeading } from "./court-heading.ts";
import { CourtScreen } from "./court-screen.tsx";

interface Mirrors {
  readonly mirror: CourtMirror;
  readonly board: BoardMirror | null;
}

/** A match over the live connection, which lives as long as the page. */
export function LiveCourt({ heading }: { readonly heading: CourtHeading }) {
  const [mirrors, setMirrors] = useState<Mirrors | null>(null);
  const { matchId, dayId } = heading;
  useEffect(() => {
    const channel = createChannel();
    const mirror = createCourtMirror(channel, matchId, { screen: "court" });
    const board = dayId === null ? null : createBoardMirror(channel, dayId, "staff");
    setMirrors({ mirror, board });
    return () => {
      mirror.close();
      board?.close();
      channel.close();
    };
  }, [matchId, dayId]);
  if (mirrors === null) return <ScreenMessage title="Reading the match" testId="court-loading" />;
  return <CourtScreen {...mirrors} heading={heading} />;
}
