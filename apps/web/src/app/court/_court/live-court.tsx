"use client";
import {
  type BoardMirror,
  type CourtMirror,
  createBoardMirror,
  createChannel,
  createCourtMirror,
} from "@courtloom/sync";
import { useEffect, useState } from "react";
import { type OpenedAlerts, openAlerts } from "../../../alerts/open-alerts.ts";
import { ScreenMessage } from "../../../board/screen-message.tsx";
import type { CourtHeading } from "./court-heading.ts";
import { CourtScreen } from "./court-screen.tsx";

interface Mirrors {
  readonly mirror: CourtMirror;
  readonly board: BoardMirror | null;
  readonly alerts: OpenedAlerts | null;
}

export interface LiveCourtProps {
  readonly heading: CourtHeading;
  readonly memberId: string;
  /** The alert that somebody came for, as the text of its key; null when they did not. */
  readonly asked: string | null;
  /** Entry id of the point that somebody came for; null when they did not. */
  readonly point: string | null;
}

/** A match over the live connection, which lives as long as the page. */
export function LiveCourt({ heading, memberId, asked, point }: LiveCourtProps) {
  const [mirrors, setMirrors] = useState<Mirrors | null>(null);
  const { matchId, dayId } = heading;
  useEffect(() => {
    const channel = createChannel();
    const mirror = createCourtMirror(channel, matchId, { screen: "court" });
    const board = dayId === null ? null : createBoardMirror(channel, dayId, "staff");
    const alerts = dayId === null ? null : openAlerts(channel, dayId, memberId);
    setMirrors({ mirror, board, alerts });
    return () => {
      mirror.close();
      board?.close();
      alerts?.close();
      channel.close();
    };
  }, [matchId, dayId, memberId]);
  if (mirrors === null) return <ScreenMessage title="Reading the match" testId="court-loading" />;
  return <CourtScreen {...mirrors} heading={heading} asked={asked} point={point} />;
}
