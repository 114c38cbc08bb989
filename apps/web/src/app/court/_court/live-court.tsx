"use client";
import { type CourtMirror, createChannel, createCourtMirror } from "@courtloom/sync";
import { useEffect, useState } from "react";
import { ScreenMessage } from "../../../board/screen-message.tsx";
import type { CourtHeading } from "./court-heading.ts";
import { CourtScreen } from "./court-screen.tsx";

/** A match over the live connection, which lives as long as the page. */
export function LiveCourt({ heading }: { readonly heading: CourtHeading }) {
  const [mirror, setMirror] = useState<CourtMirror | null>(null);
  const { matchId } = heading;
  useEffect(() => {
    const channel = createChannel();
    const next = createCourtMirror(channel, matchId);
    setMirror(next);
    return () => {
      next.close();
      channel.close();
    };
  }, [matchId]);
  if (mirror === null) return <ScreenMessage title="Reading the match" testId="court-loading" />;
  return <CourtScreen mirror={mirror} heading={heading} />;
}
