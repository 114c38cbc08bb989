import type { Side } from "@courtloom/core";
import type { EntryBody, EntryInserted, Fact, MatchView } from "@courtloom/match-log";
import { type EndSeen, turnEnds } from "@courtloom/tennis";

/** A fact before another one, as if it had been said there; at the end without `before`. */
export const factPutIn = (fact: Fact, before?: string): EntryInserted => ({
  kind: "EntryInserted",
  ...(before === undefined ? {} : { before }),
  fact,
});

/** Who served since a fact was written down wrongly. */
export const serverSince = (id: string, to: Side, slip: "players" | "chartist"): EntryBody =>
  factPutIn({ kind: "ServerStated", to, slip }, id);

/** The players served in the wrong order since a fact, and go on in the right one from now. SPEC PD88. */
export const serverBetween = (id: string, to: Side, now: Side): readonly EntryBody[] => [
  serverSince(id, to, "players"),
  { kind: "ServerStated", to: now, slip: "players" },
];

/** Ends were seen wrongly from a point on until now; `endNow` is side A's end as it is shown now. */
export const endsSince = (id: string, endNow: EndSeen): EntryBody => ({
  kind: "EndsStated",
  endOfA: turnEnds(endNow),
  since: id,
});

/**
 * Ends were seen wrongly in the game of a point alone: turned from its first point on, and back from the first
 * point after it. In the game in play that is until now. SPEC PD89.
 */
export const endsInGame = (id: string, view: MatchView, endNow: EndSeen): readonly EntryBody[] => {
  const of = (at: string) => view.points.find((point) => point.id === at)?.before;
  const game = of(id);
  const inGame = view.points.filter(
    ({ before }) => before.sets.length === game?.sets.length && `${before.games}` === `${game?.games}`,
  );
  const after = view.points[view.points.findIndex((point) => point.id === inGame.at(-1)?.id) + 1];
  const turned = endsSince(inGame[0]?.id ?? id, endNow);
  if (after === undefined) return [turned];
  return [turned, { kind: "EndsStated", endOfA: endNow, since: after.id }];
};
