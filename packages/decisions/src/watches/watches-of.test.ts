import { type EntryBody, foldLog, type Shot } from "@courtloom/match-log";
import { idAt, makeLog, openedWith, pointTo } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { watchWith } from "../testing/sample-watch.ts";
import { watchesOf } from "./watches-of.ts";

/** A ball of side A from the near end's right corner, straight on. */
const line = (missed: boolean): Shot => ({
  striker: "A",
  from: { right: 300, away: -1200 },
  to: { right: 280, away: missed ? 1330 : 900 },
  result: missed ? "missed" : "winner",
  ...(missed ? { miss: "long" } : {}),
});

/** A drawn point of side A, on its own serve: a ball kept, then a line ball. */
const drawn = (missed: boolean): Extract<EntryBody, { kind: "PointCharted" }> => {
  const kept: Shot = { striker: "A", from: { right: 300, away: -1200 } };
  const body = pointTo(missed ? "B" : "A", {
    level: "key",
    serve: { outcome: "firstIn", faults: 0 },
    shots: [kept, line(missed)],
  });
  if (body.kind !== "PointCharted") throw new Error("a point");
  return body;
};

const watched = (bodies: readonly EntryBody[]) => {
  const view = foldLog(makeLog(bodies, openedWith({ watches: [watchWith()] })));
  if (!view.ok) throw new Error(view.error);
  return watchesOf(view.value);
};

describe("the watches of a match", () => {
  const four = [true, true, true, true].map(drawn);

  it("[WA1] watch the balls that the figure of their rate counts", () => {
    expect(watched(four)).toMatchObject([
      {
        side: "A",
        rate: "lineMissed",
        state: "standing",
        match: { x: 4, n: 4 },
        hits: [2, 3, 4, 5].map(idAt),
        episodes: [{ episode: 1, raisedBy: idAt(5) }],
      },
    ]);
  });

  it("[WA1] a corrected log says what a log charted right says, alerts included", () => {
    const right = [drawn(true), drawn(true), drawn(false), drawn(true)];
    const corrected = [...four, { kind: "EntryAmended", target: idAt(4), to: drawn(false) } as const];
    expect(watched(corrected)).toEqual(watched(right));
    expect(watched(corrected)).toMatchObject([{ state: "noticed", episodes: [] }]);
  });

  it("[WA1] say the same a thousand times over", () => {
    const first = JSON.stringify(watched(four));
    for (let i = 0; i < 1000; i += 1) expect(JSON.stringify(watched(four))).toBe(first);
  });

  it("[WA1] are none where none was frozen", () => {
    const view = foldLog(makeLog(four));
    expect(view.ok && watchesOf(view.value)).toEqual([]);
  });
});
