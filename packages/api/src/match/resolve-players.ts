import { type ByPlayer, SIDES } from "@courtloom/core";
import type { PlayerFile } from "../api-store.ts";
import { failure } from "../errors/failure.ts";
import type { StaffContext } from "../procedure.ts";
import type { NamedPlayer } from "./side-field.ts";

export interface ResolvedSide {
  readonly ids: readonly string[];
  readonly own: boolean;
}

type Named = ByPlayer<readonly NamedPlayer[]>;

/** Everything is checked before the first new player is written, so that a refusal leaves nothing behind. */
const check = (sides: Named, listed: ReadonlyMap<string, PlayerFile>): void => {
  if (sides.A.length !== sides.B.length) throw failure("bad_input");
  const ids = SIDES.flatMap((side) => sides[side].flatMap((p) => ("playerId" in p ? [p.playerId] : [])));
  if (ids.some((id) => !listed.has(id))) throw failure("unknown_player");
  const names = SIDES.flatMap((side) =>
    sides[side].flatMap((p) => ("name" in p ? [p.name.toLowerCase()] : [])),
  );
  const isRepeated = new Set(ids).size < ids.length || new Set(names).size < names.length;
  if (isRepeated) throw failure("same_player");
};

const resolveSide = async (
  { store, staff }: StaffContext,
  players: readonly NamedPlayer[],
  listed: ReadonlyMap<string, PlayerFile>,
): Promise<ResolvedSide> => {
  const ids: string[] = [];
  let own = false;
  for (const player of players) {
    if ("playerId" in player) {
      ids.push(player.playerId);
      own ||= listed.get(player.playerId)?.own === true;
      continue;
    }
    const file = { displayName: player.name, hand: player.hand, own: player.own };
    const added = await store.addPlayer({
      academyId: staff.academyId,
      ...file,
      birthYear: null,
      squad: null,
      level: null,
    });
    ids.push(added.playerId);
    own ||= player.own;
  }
  return { ids, own };
};

/** The ids of both sides' players; new names are put on the list. Refuses unknown and repeated players. */
export const resolvePlayers = async (ctx: StaffContext, sides: Named): Promise<ByPlayer<ResolvedSide>> => {
  const players = await ctx.store.listPlayers({ academyId: ctx.staff.academyId });
  const listed = new Map(players.map((player) => [player.playerId, player]));
  check(sides, listed);
  return { A: await resolveSide(ctx, sides.A, listed), B: await resolveSide(ctx, sides.B, listed) };
};
