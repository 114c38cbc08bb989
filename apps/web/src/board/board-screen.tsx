"use client";
import type { BoardMirror } from "@courtloom/sync";
import Link from "next/link";
import type { CSSProperties } from "react";
import styles from "./board.module.css";
import { boardColumns, isDense } from "./board-columns.ts";
import { BoardHeader } from "./board-header.tsx";
import { CourtTile } from "./court-tile.tsx";
import { LostBanner } from "./lost-banner.tsx";
import { REFUSAL_WORDS } from "./refusal-words.ts";
import { ScreenMessage } from "./screen-message.tsx";
import { BoardMirrorContext, useBoard } from "./use-board.ts";

function Loading() {
  const reachable = useBoard((snapshot) => snapshot.reachable);
  return (
    <ScreenMessage
      title={reachable ? "Reading the courts" : "No connection to the server"}
      testId="board-loading"
    >
      {reachable ? null : <p>Trying again. Check this device's network.</p>}
    </ScreenMessage>
  );
}

function Refused() {
  const code = useBoard((snapshot) => snapshot.refusal);
  return (
    <ScreenMessage title="The board is not shown" testId="board-refused">
      <p>{code === null ? "" : REFUSAL_WORDS[code]}</p>
      {code === "signed_out" ? <Link href="/sign-in">Sign in</Link> : null}
      {code === "code_expired" ? <Link href="/wall">Enter a new code</Link> : null}
    </ScreenMessage>
  );
}

function Lost() {
  const stale = useBoard((snapshot) => snapshot.state === "stale");
  const lastHeardMs = useBoard((snapshot) => snapshot.lastHeardMs);
  const timeZone = useBoard((snapshot) => snapshot.board.day?.timeZone ?? "UTC");
  return stale ? <LostBanner lastHeardMs={lastHeardMs} timeZone={timeZone} what="board" /> : null;
}

function Courts({ deskHref }: { readonly deskHref: string | null }) {
  const order = useBoard((snapshot) => snapshot.board.order);
  if (order.length === 0) {
    return (
      <main className={styles.noCourts} data-testid="no-courts">
        <p>No courts yet. Add the order of play.</p>
        {deskHref === null ? null : (
          <Link className={styles.action} href={deskHref}>
            To the desk
          </Link>
        )}
      </main>
    );
  }
  const dense = isDense(order.length);
  const measures = {
    "--cols": boardColumns(order.length),
    "--fit": dense ? "3.55cqi" : "4.35cqi",
    "--fit-plain": dense ? "5cqi" : "5.6cqi",
  };
  return (
    <main className={styles.site} style={measures as CSSProperties}>
      {order.map((courtId) => (
        <CourtTile key={courtId} courtId={courtId} dense={dense} plain={deskHref === null} />
      ))}
    </main>
  );
}

function Screen({ deskHref }: { readonly deskHref: string | null }) {
  const state = useBoard((snapshot) => snapshot.state);
  const day = useBoard((snapshot) => snapshot.board.day);
  if (state === "refused") return <Refused />;
  if (day === undefined) return <Loading />;
  return (
    <div className={styles.board} data-testid="board" data-connection={state}>
      <BoardHeader day={day} deskHref={deskHref} />
      <Lost />
      <Courts deskHref={deskHref} />
    </div>
  );
}

export interface BoardScreenProps {
  readonly mirror: BoardMirror;
  /** Where staff go from here; null on a public wall, which leads nowhere. */
  readonly deskHref: string | null;
}

/** All courts of a day over a mirror: the staff board, or a public wall where the tiles carry no figures. */
export function BoardScreen({ mirror, deskHref }: BoardScreenProps) {
  return (
    <BoardMirrorContext value={mirror}>
      <Screen deskHref={deskHref} />
    </BoardMirrorContext>
  );
}
