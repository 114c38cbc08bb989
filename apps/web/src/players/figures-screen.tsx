"use client";
import type { PlayerHistory } from "@courtloom/api";
import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useTRPC } from "../client/trpc.ts";
import { BiggestPart } from "./biggest-part.tsx";
import { CostPart } from "./cost-part.tsx";
import { FigureDialog } from "./figure-dialog.tsx";
import { FigureGroupPart } from "./figure-group-part.tsx";
import { FIGURE_GROUPS } from "./figure-groups.ts";
import { readFigureKey, writeFigureKey } from "./figure-key.ts";
import { figuresByName } from "./figures-by-name.ts";
import { FilterPart } from "./filter-part.tsx";
import { GroupLinks } from "./group-links.tsx";
import { MatchesPart } from "./matches-part.tsx";
import { NothingCharted, NothingFits } from "./no-match.tsx";
import styles from "./players.module.css";
import { ReadState } from "./read-state.tsx";
import { READING } from "./reading-options.ts";
import { StandingPart } from "./standing-part.tsx";
import { type HistoryPlace, useHistoryPlace } from "./use-history-place.ts";

interface FiguresScreenProps {
  readonly playerId: string;
  readonly playerName: string;
  /** Today by the academy's clocks, as "2026-05-30". */
  readonly today: string;
}

interface FoundProps extends Omit<FiguresScreenProps, "today"> {
  readonly history: PlayerHistory;
  readonly place: HistoryPlace;
}

function Figures({ playerId, playerName, history, place }: FoundProps) {
  const figures = figuresByName(history.figures);
  const opened = readFigureKey(place.opened);
  return (
    <>
      <StandingPart history={history} />
      <GroupLinks />
      <div className={styles.groups}>
        {FIGURE_GROUPS.map((group) => (
          <FigureGroupPart
            key={group.id}
            playerName={playerName}
            group={group}
            figures={figures}
            open={(figure) => place.open(writeFigureKey(figure))}
          />
        ))}
        <CostPart playerId={playerId} playerName={playerName} filter={place.filter} />
        <BiggestPart matches={history.matches} />
        <MatchesPart matches={history.matches} />
      </div>
      {opened === undefined ? null : (
        <FigureDialog
          key={place.opened}
          playerId={playerId}
          playerName={playerName}
          figure={opened}
          row={figures[opened.figure]}
          filter={place.filter}
          onClose={place.close}
        />
      )}
    </>
  );
}

function Found(props: FoundProps) {
  const { playerName, history, place } = props;
  if (history.matchesInAll === 0) return <NothingCharted playerName={playerName} />;
  if (history.matches.length === 0) {
    return <NothingFits matchesInAll={history.matchesInAll} countAll={() => place.setFilter({})} />;
  }
  return <Figures {...props} />;
}

/** A player's figures over the matches that the filters pick. SPEC PF1 to PF12. */
export function FiguresScreen({ playerId, playerName, today }: FiguresScreenProps) {
  const trpc = useTRPC();
  const place = useHistoryPlace();
  const reading = useQuery(
    trpc.figures.player.queryOptions(
      { playerId, filter: place.filter },
      { ...READING, placeholderData: keepPreviousData },
    ),
  );
  return (
    <>
      {reading.data?.matchesInAll === 0 ? null : (
        <FilterPart
          filter={place.filter}
          choices={reading.data?.choices}
          today={today}
          set={place.setFilter}
        />
      )}
      <ReadState what={`the figures of ${playerName}`} reading={reading}>
        {(history) => <Found playerId={playerId} playerName={playerName} history={history} place={place} />}
      </ReadState>
    </>
  );
}
