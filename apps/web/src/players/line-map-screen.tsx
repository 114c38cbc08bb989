"use client";
import type { LineMap } from "@courtloom/api";
import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useTRPC } from "../client/trpc.ts";
import { CourtMap } from "./court-map.tsx";
import { FilterPart } from "./filter-part.tsx";
import { matches } from "./history-words.ts";
import styles from "./line-map.module.css";
import { bothCounts, spotWords } from "./map-words.ts";
import { NothingFits } from "./no-match.tsx";
import { PointsDialog } from "./points-dialog.tsx";
import { ReadState } from "./read-state.tsx";
import { READING } from "./reading-options.ts";
import { spotName } from "./spot-name.ts";
import { SpotPanel } from "./spot-panel.tsx";
import { type HistoryPlace, useHistoryPlace } from "./use-history-place.ts";

interface LineMapScreenProps {
  readonly playerId: string;
  readonly playerName: string;
  /** Today by the academy's clocks, as "2026-05-30". */
  readonly today: string;
}

interface FoundProps extends Omit<LineMapScreenProps, "today"> {
  readonly map: LineMap;
  readonly place: HistoryPlace;
}

const KEY = [
  { verdict: "pays", word: "Pays", means: "more points won with the line" },
  { verdict: "costs", word: "Costs", means: "fewer points won with the line" },
  { verdict: "cantTell", word: "Can't tell yet", means: "too few, or too even" },
] as const;

function About({ map }: { readonly map: LineMap }) {
  const { fit, matchesLeftOut } = map;
  return (
    <section className={styles.about} aria-labelledby="where">
      <h2 id="where">Where the line pays</h2>
      <p>Points when the ball went down the line, against points when it was kept from the same place.</p>
      <ul className={styles.keyList}>
        {KEY.map(({ verdict, word, means }) => (
          <li key={verdict}>
            <span className={styles.swatch} data-verdict={verdict} />
            <span>
              <b>{word}</b> {means}
            </span>
          </li>
        ))}
      </ul>
      <p className={styles.quiet}>+2: about 2 more points in every 10 balls.</p>
      <p data-testid="map-standing">
        {matches(map.matches)} charted at every ball.
        {matchesLeftOut === 0 ? "" : ` ${matches(matchesLeftOut)} left out: charted in less detail.`}
      </p>
      {fit === null ? (
        <p>Nothing is fitted yet: the academy has too few matches charted at every ball.</p>
      ) : (
        <p className={styles.quiet}>
          Fitted from {matches(fit.matches)} of {fit.players} players. 90 % intervals.
        </p>
      )}
    </section>
  );
}

const POINTS = ".points";

/** The place that is opened, and whether its points are too. */
const readOpened = (opened: string | null) => {
  const isPoints = opened?.endsWith(POINTS) ?? false;
  return { isPoints, name: isPoints ? (opened ?? "").slice(0, -POINTS.length) : opened };
};

function OpenedMap({ playerId, playerName, map, place }: FoundProps) {
  const { name, isPoints } = readOpened(place.opened);
  const spot = map.spots.find((each) => spotName(each) === name);
  const part = spot && spotName(spot);
  return (
    <div className={styles.layout}>
      <About map={map} />
      <CourtMap playerName={playerName} spots={map.spots} chosen={part ?? null} choose={place.open} />
      {spot && part ? (
        <SpotPanel spot={spot} showPoints={() => place.open(`${part}${POINTS}`)} />
      ) : (
        <p className={styles.panel}>Choose a place on the court: its counts and points open.</p>
      )}
      {spot && part && isPoints ? (
        <PointsDialog
          playerId={playerId}
          title={spotWords(spot)}
          figure={{ figure: "lineShare", part }}
          filter={{ ...place.filter, level: "every" }}
          words={{ hits: "Down the line", others: "Kept" }}
          tags={{ hits: "down the line", others: "kept" }}
          onClose={() => place.open(part)}
        >
          <p>{bothCounts(spot)}, in points whose outcome counts.</p>
        </PointsDialog>
      ) : null}
    </div>
  );
}

function Found(props: FoundProps) {
  const { map, place } = props;
  const isNothing = map.matches === 0 && map.matchesLeftOut === 0 && Object.keys(place.filter).length > 0;
  return isNothing ? <NothingFits countAll={() => place.setFilter({})} /> : <OpenedMap {...props} />;
}

/** By place: where points go with the line, where with the kept ball, and where it cannot be told. SPEC PF13 to PF15. */
export function LineMapScreen({ playerId, playerName, today }: LineMapScreenProps) {
  const trpc = useTRPC();
  const place = useHistoryPlace();
  const reading = useQuery(
    trpc.figures.lineMap.queryOptions(
      { playerId, filter: place.filter },
      { ...READING, placeholderData: keepPreviousData },
    ),
  );
  const history = useQuery(
    trpc.figures.player.queryOptions({ playerId, filter: {} }, { ...READING, enabled: reading.isSuccess }),
  );
  return (
    <>
      <FilterPart filter={place.filter} choices={history.data?.choices} today={today} set={place.setFilter} />
      <ReadState what={`where the line pays for ${playerName}`} reading={reading}>
        {(map) => <Found playerId={playerId} playerName={playerName} map={map} place={place} />}
      </ReadState>
    </>
  );
}
