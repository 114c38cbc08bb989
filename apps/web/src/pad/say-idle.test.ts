import { foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { EMPTY_DRAFT } from "./point-draft.ts";
import { sayIdle } from "./say-idle.ts";
import { type SeatChoice, seatOf, shownEndOfA } from "./shown-ends.ts";
import { matchOpened } from "./testing/match-opened.ts";

const names = { A: "Noor", B: "Elsbeth" };

/** The match after so many points that Noor won, from the near end on. */
const after = (points: number): MatchView => {
  const point = { winner: "A", level: "score", seat: "behind", endOfA: "near", shots: [] } as const;
  let view: MatchView | undefined;
  const log: LoggedEntry[] = [];
  for (let i = 0; i <= points; i += 1) {
    const body =
      i === 0
        ? matchOpened
        : ({ kind: "PointCharted", point: { ...point, endOfA: view?.endOfA ?? "near" } } as const);
    log.push({
      pos: i + 1,
      laneId: "l",
      epoch: 1,
      entry: { v: 1, id: `e${i}`, n: i, atMs: 0, wallMs: 0, body },
    });
    const folded = foldLog(log);
    if (!folded.ok) throw new Error(folded.error);
    view = folded.value;
  }
  if (!view) throw new Error("a log has an opening");
  return view;
};
const says = (view: MatchView, seat: SeatChoice, secondsLeft?: number) =>
  sayIdle({
    view,
    draft: EMPTY_DRAFT,
    frame: { server: "B", seat: seatOf(seat), endOfA: shownEndOfA(seat, view.endOfA, ["A"]) ?? "near" },
    names,
    seat,
    secondsLeft,
    opened: undefined,
    redrawing: false,
    asksServe: true,
    message: undefined,
  });

describe("the strip at a change of ends", () => {
  it("[PD17] says who is where now, and that there is no sit-down after a set's first game", () => {
    expect(says(after(4), "behind")).toEqual({
      lead: "Change of ends.",
      rest: "Noor is now far; the court has turned.",
      aside: "no sit-down",
    });
    expect(says(after(4), "side").rest).toBe("Noor is now right; the court has turned.");
    expect(says(after(4), "alwaysNear").rest).toBe("Noor stays near in this drawing.");
  });

  it("[PD17] says the time left of a rest, and nothing when it is over", () => {
    expect(says(after(12), "behind", 83)).toEqual({
      lead: "Change of ends.",
      rest: "Elsbeth is now far; the court has turned.",
      aside: "1:23 left",
    });
    expect(says(after(12), "behind").aside).toBe("");
    expect(says(after(24), "behind", 60)).toEqual({
      lead: "Set break.",
      rest: "Elsbeth serves next; ends stay.",
      aside: "1:00 left",
    });
  });

  it("[PD17] goes back to the serve where no ends change", () => {
    expect(says(after(8), "behind")).toMatchObject({ lead: "Elsbeth serves", aside: "In, fault or ace?" });
  });
});
