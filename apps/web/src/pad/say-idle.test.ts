import { foldLog, type LoggedEntry, type MatchView } from "@courtloom/match-log";
import { describe, expect, it } from "vitest";
import { EMPTY_DRAFT, type PointDraft } from "./point-draft.ts";
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

describe("the strip at key balls", () => {
  const frame = { server: "A", seat: "behind", endOfA: "near", subject: "A" } as const;
  const kept = { striker: "A", from: { right: 300, away: -1_200 } } as const;
  const saysOf = (draft: PointDraft) =>
    sayIdle({
      view: after(0),
      draft,
      frame,
      names,
      seat: "behind",
      secondsLeft: undefined,
      opened: undefined,
      redrawing: false,
      asksServe: true,
      message: undefined,
    });

  it("[PD24] says what to touch and what to drag", () => {
    expect(saysOf({ ...EMPTY_DRAFT, serve: "firstIn" })).toEqual({
      lead: "Touch Noor’s kept balls,",
      rest: "drag line, short and last ones",
    });
    expect(saysOf({ ...EMPTY_DRAFT, shots: [kept] }).aside).toBe("Go on, or how it ended");
  });

  it("[PD26, PD29] says whose last shot ended the point, drawn or not", () => {
    const lead = (draft: Partial<PointDraft>) => saysOf({ ...EMPTY_DRAFT, serve: "firstIn", ...draft }).lead;
    expect(lead({ shots: [kept], said: { type: "undrawn", winner: "B" } })).toBe("Elsbeth: winner.");
    expect(lead({ shots: [kept], said: { type: "undrawn", winner: "A" } })).toBe("Elsbeth missed.");
    expect(lead({ said: { type: "undrawn", winner: "A" } })).toBe("Elsbeth missed.");
    expect(lead({ shots: [{ ...kept, leftOut: "calledOut" }] })).toBe("Noor: called out.");
  });
});
