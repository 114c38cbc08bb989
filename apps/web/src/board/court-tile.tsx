import type { BoardCourt } from "@courtloom/sync";
import Link from "next/link";
import { memo } from "react";
import { useStandingAlert } from "../alerts/use-alerts.ts";
import type { BoardStep } from "./board-columns.ts";
import { useBoardFacts } from "./board-facts.ts";
import { ScoreTable } from "./score-table.tsx";
import styles from "./tile.module.css";
import { TileBody } from "./tile-body.tsx";
import { TileEndsLine } from "./tile-ends.tsx";
import { TileFlag } from "./tile-flag.tsx";
import { TileFreshness } from "./tile-freshness.tsx";
import { TileMeta } from "./tile-meta.tsx";
import { alertState } from "./tile-words.ts";
import { useBoardCourt, useFreshnessKind } from "./use-board.ts";

/** A court's number, and its name where that says more; leads to the court's page where there is one to see. */
function TileHeading({ court }: { readonly court: BoardCourt }) {
  const { courtNo, courtName, matchId, staff } = court.tile;
  const saysMore = courtName !== `Court ${courtNo}` && courtName !== String(courtNo);
  const number = (
    <>
      <span className="vh">Court </span>
      {courtNo}
    </>
  );
  return (
    <>
      <h2 className={styles.heading} id={`court-${courtNo}`}>
        {staff && matchId !== null ? (
          <Link className={styles.cover} href={`/court/${matchId}`} prefetch={false}>
            {number}
          </Link>
        ) : (
          number
        )}
      </h2>
      {saysMore ? <p className={styles.courtName}>{courtName}</p> : null}
    </>
  );
}

export interface CourtTileProps {
  readonly courtId: string;
  readonly step: BoardStep;
  /** On a public wall there are no figures: the score has the court to itself. */
  readonly plain: boolean;
  /** Not among the courts that were asked for: it keeps its place, with its score alone. */
  readonly quiet: boolean;
}

/** So many courts that the change of ends stands beside the number. */
const isPacked = (step: BoardStep): boolean => step === "tight" || step === "tiny";

/** How much of the tile turns over; nothing of a court that is not asked for, blind or the past. SPEC rule AS21. */
const useTurned = (court: BoardCourt | undefined, isHidden: boolean) => {
  const standing = useStandingAlert(court?.tile.matchId ?? null);
  const state = court && alertState(court.tile);
  if (isHidden || state === undefined) return {};
  if (state !== "standing") return { "data-alert": state };
  return { "data-alert": standing?.snoozed ? "snoozed" : state, "data-rate": standing?.rate };
};

/** One court of a day in its fixed place. Drawn again when its own court changes, and not for any other. */
export const CourtTile = memo(function CourtTile({ courtId, step, plain, quiet }: CourtTileProps) {
  const court = useBoardCourt(courtId);
  const freshness = useFreshnessKind(courtId);
  const { stale } = useBoardFacts();
  const turned = useTurned(court, quiet || stale || freshness === "blind");
  if (!court) return null;
  const { tile } = court;
  const underWay = tile.state === "playing" || tile.state === "suspended";
  const blind = freshness === "blind" || (stale && underWay);
  const showsEnds = !blind;
  return (
    <article
      className={styles.tile}
      aria-labelledby={`court-${tile.courtNo}`}
      data-testid={`tile-${tile.courtNo}`}
      data-state={tile.state}
      data-freshness={freshness}
      data-blind={blind || stale || undefined}
      data-step={step}
      data-dense={step === "dense" || undefined}
      data-quiet={quiet || undefined}
      {...turned}
      data-plain={plain || undefined}
    >
      <div className={styles.inside}>
        <div className={styles.top}>
          <TileHeading court={court} />
          <TileFlag tile={tile} quiet={quiet} />
          {isPacked(step) && showsEnds && !quiet ? <TileEndsLine courtId={courtId} /> : null}
          <TileFreshness courtId={courtId} />
        </div>
        {tile.names ? <ScoreTable names={tile.names} own={tile.own} score={tile.score} /> : null}
        {tile.state === "empty" ? (
          <p className={styles.empty}>No match{tile.next ? `, ${tile.next}` : ""}</p>
        ) : null}
        {tile.state === "over" && tile.next ? <p className={styles.next}>Next: {tile.next}</p> : null}
        {/* Hidden where quiet, and still there: what is shown elsewhere must not move a court. */}
        <div className={styles.rest}>
          {showsEnds && !isPacked(step) ? <TileEndsLine courtId={courtId} /> : null}
          <TileBody court={court} blind={blind} />
          <TileMeta court={court} blind={blind} />
        </div>
      </div>
    </article>
  );
});
