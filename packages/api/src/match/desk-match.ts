import { type ByPlayer, byPlayer, type Side } from "@courtloom/core";
import type { CoachingMode } from "@courtloom/match-log";
import type { MatchRow, MatchStage } from "../api-store.ts";
import { describeFormat } from "./describe-format.ts";

/** A match as desks and court pages show it. */
export interface DeskMatch {
  readonly matchId: string;
  readonly dayId: string | null;
  readonly courtId: string | null;
  readonly orderNo: number;
  readonly title: string;
  readonly playedOn: string;
  /** Display names; a pair's two names with a stroke between. */
  readonly names: ByPlayer<string>;
  readonly own: ByPlayer<boolean>;
  /** Both sides are of this academy: its coaches speak to neither. */
  readonly bothOwn: boolean;
  readonly doubles: boolean;
  readonly format: string;
  readonly coachingMode: CoachingMode;
  readonly subjects: readonly Side[];
  readonly firstServer: Side | null;
  readonly stage: MatchStage;
}

const nameOf = (match: MatchRow, side: Side): string => {
  const partner = match.partners[side];
  const first = match.players[side].displayName;
  return partner === null ? first : `${first} / ${partner.displayName}`;
};

export const toDeskMatch = (match: MatchRow): DeskMatch => {
  const own = byPlayer((side) => match.players[side].own || match.partners[side]?.own === true);
  const { matchId, dayId, courtId, orderNo, title, playedOn } = match;
  const { doubles, coachingMode, subjects, firstServer, stage } = match;
  return {
    matchId,
    dayId,
    courtId,
    orderNo,
    title,
    playedOn,
    names: byPlayer((side) => nameOf(match, side)),
    own,
    bothOwn: own.A && own.B,
    doubles,
    format: describeFormat(match.format),
    coachingMode,
    subjects,
    firstServer,
    stage,
  };
};
