import type { Hand, PlayerFile } from "@courtloom/api";

export type ListedPlayer = Pick<PlayerFile, "playerId" | "displayName" | "own">;

/** How a player goes to the server: somebody on the list by id, somebody new by name. */
export type NamedPlayer =
  | { readonly playerId: string }
  | { readonly name: string; readonly hand: Hand; readonly own: boolean };

const plain = (name: string): string => name.normalize("NFC").trim().replace(/\s+/g, " ").toLowerCase();

/** Who on the list is meant by a typed name; undefined for a new one, and for a name that two people share. */
export const findPlayer = <T extends ListedPlayer>(players: readonly T[], typed: string): T | undefined => {
  const found = players.filter((player) => plain(player.displayName) === plain(typed));
  return found.length === 1 ? found[0] : undefined;
};

export const namePlayer = (
  players: readonly ListedPlayer[],
  typed: { readonly name: string; readonly hand: Hand; readonly own: boolean },
): NamedPlayer => {
  const known = findPlayer(players, typed.name);
  return known ? { playerId: known.playerId } : typed;
};
