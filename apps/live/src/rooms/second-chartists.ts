import { DESK_LANE, type MatchView } from "@courtloom/match-log";

/** Lanes that charted something beside the lead, each once, in the order of their first entry. */
const secondLanes = (view: MatchView | undefined): readonly string[] => [
  ...new Set(view?.trail.second.map(({ laneId }) => laneId)),
];

/** Every lane that a match has something of, but the desk's. */
export const lanesIn = (view: MatchView | undefined): readonly string[] => {
  if (!view) return [];
  const { facts, second, refused } = view.trail;
  const lanes = new Set([...facts, ...second, ...refused].map(({ laneId }) => laneId));
  lanes.delete(DESK_LANE);
  return [...lanes];
};

/**
 * Names of those who charted beside the lead, each once; `names` by lane. A lane whose name is not known yet is
 * left out. SPEC LV37.
 */
export const secondChartists = (
  view: MatchView | undefined,
  names: ReadonlyMap<string, string>,
): readonly string[] => [...new Set(secondLanes(view).flatMap((laneId) => names.get(laneId) ?? []))];
