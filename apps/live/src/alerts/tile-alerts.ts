import { breaksOf, type WatchView } from "@courtloom/decisions";
import type { MatchView } from "@courtloom/match-log";
import type { TileAlert } from "@courtloom/protocol";
import type { StoredAlert } from "./alert-store.ts";
import { watchesSeen } from "./watches-seen.ts";

const GRAVITY: Readonly<Record<TileAlert["state"], number>> = {
  standing: 0,
  easing: 1,
  noticed: 2,
  withdrawn: 3,
};

/** "2–1": games from the player's side when the point began. */
const gamesAt = (view: MatchView, { side }: WatchView, pointId: string | undefined): string | null => {
  const point = view.points.find(({ id }) => id === pointId);
  if (!point) return null;
  const [a, b] = point.before.games;
  return side === "A" ? `${a}–${b}` : `${b}–${a}`;
};

const ofWatch = (view: MatchView, watch: WatchView): readonly TileAlert[] => {
  const { side, state, since, episodes } = watch;
  if (state === "quiet") return [];
  const from = state === "noticed" ? since?.from.pointId : episodes.at(-1)?.raisedBy;
  return [{ side, state, since: gamesAt(view, watch, from) }];
};

/** A withdrawn alert stays in sight until ends are changed. */
const isRecent = ({ state, said }: StoredAlert, view: MatchView): boolean =>
  state === "withdrawn" && said.breaks === breaksOf(view);

/** What a tile shows of its match's watches, the gravest first; empty when all are quiet. SPEC AL24. */
export const tileAlertsOf = (view: MatchView, rows: readonly StoredAlert[]): readonly TileAlert[] => {
  const watches = watchesSeen(view).toSorted((a, b) => b.strength - a.strength);
  const withdrawn = rows
    .filter((row) => isRecent(row, view))
    .map(({ side }): TileAlert => ({ side, state: "withdrawn", since: null }));
  return [...watches.flatMap((watch) => ofWatch(view, watch)), ...withdrawn].toSorted(
    (a, b) => GRAVITY[a.state] - GRAVITY[b.state],
  );
};
