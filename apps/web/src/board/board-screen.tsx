"use client";
import type { BoardMirror } from "@courtloom/sync";
import Link from "next/link";
import { type CSSProperties, Fragment, useState } from "react";
import { AlertStrip } from "../alerts/alert-strip.tsx";
import { AlertsProvider } from "../alerts/alerts-provider.tsx";
import styles from "./board.module.css";
import { boardColumns, boardStep } from "./board-columns.ts";
import { BoardFactsProvider } from "./board-facts-provider.tsx";
import { BoardHeader } from "./board-header.tsx";
import { type BoardTools, BoardToolsContext } from "./board-tools.ts";
import { useQuietCourts } from "./choice/use-choice.ts";
import { CourtTile } from "./court-tile.tsx";
import { foldsBefore } from "./folds-before.ts";
import { LostBanner } from "./lost-banner.tsx";
import panel from "./panel/panel.module.css";
import { PanelBody } from "./panel/panel-body.tsx";
import { useHasRoom } from "./panel/use-has-room.ts";
import { REFUSAL_WORDS } from "./refusal-words.ts";
import { ScreenMessage } from "./screen-message.tsx";
import { BoardMirrorContext, useBoard, useBoardMirror } from "./use-board.ts";

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
  const lastHeardMs = useBoard((snapshot) => snapshot.lastHeardMs);
  const timeZone = useBoard((snapshot) => snapshot.board.day?.timeZone ?? "UTC");
  return <LostBanner lastHeardMs={lastHeardMs} timeZone={timeZone} what="board" />;
}

function NoCourts({ deskHref }: { readonly deskHref: string | null }) {
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

function Courts({ order, plain }: { readonly order: readonly string[]; readonly plain: boolean }) {
  const quiet = useQuietCourts();
  const mirror = useBoardMirror();
  const numberOf = (id: string) => mirror.get().board.courts.get(id)?.tile.courtNo ?? 0;
  const step = boardStep(order.length);
  const folds = foldsBefore(order, quiet, numberOf);
  return (
    <main
      className={styles.site}
      style={{ "--cols": boardColumns(order.length) } as CSSProperties}
      data-step={step}
      data-testid="courts"
    >
      {order.map((courtId) => (
        <Fragment key={courtId}>
          {folds.has(courtId) ? (
            <p className={styles.fold} data-testid="fold">
              {folds.get(courtId)}
            </p>
          ) : null}
          <CourtTile courtId={courtId} step={step} plain={plain} quiet={quiet.has(courtId)} />
        </Fragment>
      ))}
    </main>
  );
}

/** The board beneath its header: the courts, and on staff boards with room for it the panel beside them. */
function Ground({
  deskHref,
  order,
  beside,
}: {
  readonly deskHref: string | null;
  readonly order: readonly string[];
  readonly beside: BoardTools | null;
}) {
  const courts =
    order.length === 0 ? (
      <NoCourts deskHref={deskHref} />
    ) : (
      <Courts order={order} plain={deskHref === null} />
    );
  if (beside === null) return courts;
  return (
    <div className={styles.beside}>
      {courts}
      <aside className={panel.panel} aria-label="Alerts, changes and what to show" data-testid="panel">
        <PanelBody tools={beside} />
      </aside>
    </div>
  );
}

interface ScreenProps {
  readonly deskHref: string | null;
  readonly tools: BoardTools | null;
}

function Screen({ deskHref, tools }: ScreenProps) {
  const state = useBoard((snapshot) => snapshot.state);
  const day = useBoard((snapshot) => snapshot.board.day);
  const order = useBoard((snapshot) => snapshot.board.order);
  const hasRoom = useHasRoom(order.length);
  const [isSheetOpen, setSheetOpen] = useState(false);
  const stale = state === "stale";
  const sheet = hasRoom ? null : tools;
  if (state === "refused") return <Refused />;
  if (day === undefined) return <Loading />;
  return (
    <BoardFactsProvider>
      <AlertsProvider alerts={tools?.alerts ?? null} timeZone={day.timeZone}>
        <div className={styles.board} data-testid="board" data-connection={state}>
          <BoardHeader
            day={day}
            deskHref={deskHref}
            sheet={sheet && { tools: sheet, open: isSheetOpen, setOpen: setSheetOpen }}
          />
          {stale ? <Lost /> : null}
          {sheet ? <AlertStrip open={() => setSheetOpen(true)} /> : null}
          <Ground deskHref={deskHref} order={order} beside={hasRoom ? tools : null} />
        </div>
      </AlertsProvider>
    </BoardFactsProvider>
  );
}

export interface BoardScreenProps {
  readonly mirror: BoardMirror;
  /** Null on a public wall. */
  readonly tools: BoardTools | null;
  /** Where staff go from here; null on a public wall, which leads nowhere. */
  readonly deskHref: string | null;
}

/** All courts of a day over a mirror: the staff board, or a public wall where the tiles carry no figures. */
export function BoardScreen({ mirror, tools, deskHref }: BoardScreenProps) {
  return (
    <BoardMirrorContext value={mirror}>
      <BoardToolsContext value={tools}>
        <Screen deskHref={deskHref} tools={tools} />
      </BoardToolsContext>
    </BoardMirrorContext>
  );
}
