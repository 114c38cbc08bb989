import type { Side } from "@courtloom/core";
import type { MatchFormat } from "./format.ts";
import { callOfGame, isGameDeciding } from "./game.ts";
import { otherIndex, type SideIndex, sideAt, sum } from "./pair.ts";
import type { ScoreState } from "./score-state.ts";
import { isOver, isTiebreak, type Standing, serverNow, turnNow } from "./standing.ts";
import { isTiebreakDeciding } from "./tiebreak.ts";

/** Everything that can be said of a standing; the only place where a call, a half or a server is worked out. */
export function deriveState(format: MatchFormat, firstServer: Side, standing: Standing): ScoreState {
  const over = isOver(standing);
  const tieBreak = !over && isTiebreak(standing);
  const server = serverNow(standing, firstServer);
  const decides = isDeciding(format, standing, tieBreak);
  const state: ScoreState = {
    sets: standing.sets,
    setsWon: standing.setsWon,
    games: standing.games,
    points: standing.points,
    call: over ? "match" : callNow(format, standing, tieBreak, server, decides),
    server: over ? null : sideAt(server),
    side: over ? null : decides ? "receiver-chooses" : sum(standing.points) % 2 === 0 ? "deuce" : "ad",
    tieBreak,
    matchTieBreak: tieBreak && standing.rules.kind === "tiebreak",
    endsDue: standing.endsDue,
    changesOfEnds: standing.changesOfEnds,
    pause: standing.pause,
    over,
    winner: standing.winner === null ? null : sideAt(standing.winner),
    status: standing.status,
  };
  const serverPlayer = over ? undefined : playerServing(standing, server);
  return serverPlayer === undefined ? state : { ...state, serverPlayer };
}

function isDeciding(format: MatchFormat, standing: Standing, tieBreak: boolean): boolean {
  if (standing.bell !== null) return true;
  return tieBreak
    ? isTiebreakDeciding(standing.rules.tiebreak, standing.points)
    : isGameDeciding(format.noAd, standing.points);
}

function callNow(
  format: MatchFormat,
  standing: Standing,
  tieBreak: boolean,
  server: SideIndex,
  decides: boolean,
): string {
  if (decides) return "deciding";
  const own = standing.points[server];
  const other = standing.points[otherIndex(server)];
  return tieBreak ? `${own}-${other}` : callOfGame(format.noAd, own, other);
}

/** In doubles each pair keeps its own alternation, so a side put right never skips a player. SPEC SC35. */
function playerServing(standing: Standing, server: SideIndex): string | undefined {
  if (standing.pairs === null) return undefined;
  const earlierInGame = Math.floor(turnNow(standing) / 2);
  return standing.pairs.players[server][(standing.pairs.served[server] + earlierInGame) % 2];
}
