"use client";
import type { BoardView } from "@courtloom/protocol";
import { type BoardMirror, type Channel, createBoardMirror, createChannel } from "@courtloom/sync";
import { useEffect, useState } from "react";
import { openAlerts } from "../alerts/open-alerts.ts";
import { BoardScreen } from "./board-screen.tsx";
import type { BoardTools } from "./board-tools.ts";
import { createChoiceStore } from "./choice/choice-store.ts";
import { deviceStorage } from "./choice/device-storage.ts";
import { createLookStore, pageVisibility } from "./look/look-store.ts";
import { ScreenMessage } from "./screen-message.tsx";

export interface LiveBoardProps {
  readonly dayId: string;
  readonly view: BoardView;
  /** Whose choices this device keeps; absent on a public wall, where nobody chooses. */
  readonly account?: string;
}

interface Opened {
  readonly mirror: BoardMirror;
  readonly tools: BoardTools | null;
}

interface ToolsFor {
  readonly channel: Channel;
  readonly mirror: BoardMirror;
  readonly dayId: string;
  readonly account: string;
}

const openTools = ({ channel, mirror, dayId, account }: ToolsFor): BoardTools => ({
  alerts: openAlerts(channel, dayId, account),
  choice: createChoiceStore(deviceStorage("localStorage"), account, dayId),
  look: createLookStore({
    mirror,
    storage: deviceStorage("sessionStorage"),
    key: `courtloom-look-${account}-${dayId}`,
    visibility: pageVisibility,
    monotonicMs: () => performance.now(),
  }),
});

/** A day's board over the live connection, which lives as long as the page. */
export function LiveBoard({ dayId, view, account }: LiveBoardProps) {
  const [opened, setOpened] = useState<Opened | null>(null);
  useEffect(() => {
    const channel = createChannel();
    const mirror = createBoardMirror(channel, dayId, view);
    const tools = account === undefined ? null : openTools({ channel, mirror, dayId, account });
    setOpened({ mirror, tools });
    return () => {
      tools?.look.close();
      tools?.alerts.close();
      mirror.close();
      channel.close();
    };
  }, [dayId, view, account]);
  if (opened === null) return <ScreenMessage title="Reading the courts" testId="board-loading" />;
  const deskHref = view === "staff" ? "/desk" : null;
  return <BoardScreen mirror={opened.mirror} tools={opened.tools} deskHref={deskHref} />;
}
