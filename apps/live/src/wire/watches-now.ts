import { byPlayer } from "@courtloom/core";
import type { DayStore } from "@courtloom/db";
import { settingsForPlayer, type WatchedPlayers } from "@courtloom/decisions";
import type { MatchCard } from "../store.ts";

/** What is watched this moment of each own player of a match; null for a visitor. SPEC WA16. */
export const watchesNow = async (
  days: Pick<DayStore, "watchSettings">,
  { academyId, players }: Pick<MatchCard, "academyId" | "players">,
): Promise<WatchedPlayers> => {
  const own = [players.A, players.B].filter((player) => player.own).map(({ playerId }) => playerId);
  const settings = await days.watchSettings({ academyId, playerIds: own });
  const choiceOf = (playerId: string | null) =>
    settings.find((setting) => setting.playerId === playerId)?.choice;
  return byPlayer((side) => {
    const { playerId, own: isOwn } = players[side];
    return isOwn ? settingsForPlayer(choiceOf(null), choiceOf(playerId)) : null;
  });
};
