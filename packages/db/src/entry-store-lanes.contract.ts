import { foldLog, SECOND_EPOCH } from "@courtloom/match-log";
import { expect, it } from "vitest";
import type { LeadLane, OpenLane } from "./entry-store.ts";
import { items, laneOf, openingOf } from "./testing/log-fixtures.ts";
import { ACADEMY, type StoreBench } from "./testing/store-bench.ts";

const leadOf = ({ laneId, chartist, owner }: OpenLane): LeadLane => ({ laneId, chartist, owner });

/** Opening a match, opening its lanes, and who leads. Part of the contract of every entry store. */
export function lanesContract({ store, newMatch, openMatch, openLane, readAll }: StoreBench): void {
  it("[ES1] writes the opening at pos 1 in the desk's lane, and answers the same opening again", async () => {
    const match = await newMatch();
    const opened = openingOf(match.matchId);
    const first = await store().openMatch({ ...match, opened });
    expect(first).toMatchObject({
      ok: true,
      value: {
        head: 1,
        opening: { pos: 1, laneId: "desk", epoch: 0, entry: { v: 1, n: 1, body: opened } },
      },
    });
    expect(await store().openMatch({ ...match, opened })).toEqual(first);
    expect(await readAll(match)).toHaveLength(1);
  });

  it("[ES1] refuses another opening, and one of a match that nobody announced", async () => {
    const match = await openMatch();
    const opened = { ...openingOf(match.matchId), firstServer: "B" as const };
    expect(await store().openMatch({ ...match, opened })).toEqual({
      ok: false,
      error: { code: "already_opened" },
    });
    const unknown = { academyId: ACADEMY, matchId: "nowhere" };
    expect(await store().openMatch({ ...unknown, opened: openingOf("nowhere") })).toEqual({
      ok: false,
      error: { code: "unknown_match" },
    });
  });

  it("[ES2] gives the first lane the lead, and resumes it where it stopped", async () => {
    const match = await openMatch();
    const lane = laneOf(ACADEMY, match.matchId, "lead");
    const incarnation = await store().incarnation();
    const opened = await store().openLane(lane);
    expect(opened).toEqual({
      ok: true,
      value: {
        incarnation: incarnation.ok ? incarnation.value : "",
        ...{ epoch: 1, cursor: 0, head: 1 },
        lead: { laneId: "lead", chartist: "chartist of lead", owner: lane.owner },
      },
    });
    await store().append({ ...match, laneId: "lead", items: items("lead", 1, 4) });
    expect(await store().openLane(lane)).toMatchObject({ value: { epoch: 1, cursor: 4, head: 5 } });
  });

  it("[ES2] refuses a second lane while there is a lead, and names its chartist", async () => {
    const { matchId } = await openLane();
    expect(await store().openLane(laneOf(ACADEMY, matchId, "other"))).toEqual({
      ok: false,
      error: { code: "lead_taken", lead: leadOf(laneOf(ACADEMY, matchId, "lead")) },
    });
  });

  it("[ES17] gives the lead to a new lane that takes over, with the next epoch, and says so in the log", async () => {
    const lane = await openLane();
    await store().append({ ...lane, items: items("lead", 1, 2) });
    const next = laneOf(ACADEMY, lane.matchId, "next");
    const taken = await store().openLane({ ...next, takeOver: "lead" });
    expect(taken).toMatchObject({ value: { epoch: 2, cursor: 0, head: 4, lead: leadOf(next) } });
    const head = await store().head(lane);
    expect(head).toMatchObject({
      value: { pos: 4, epoch: 2, leadLaneId: "next", chartist: "chartist of next", level: "key" },
    });
    expect((await readAll(lane)).at(-1)).toMatchObject({
      ...{ pos: 4, laneId: "desk", epoch: 0 },
      entry: { n: 2, body: { kind: "LeadTaken", laneId: "next", epoch: 2 } },
    });
  });

  it("[ES17] still takes what the old lead charted, in its own lane with its own epoch", async () => {
    const lane = await openLane();
    await store().append({ ...lane, items: items("lead", 1, 1) });
    const next = laneOf(ACADEMY, lane.matchId, "next");
    await store().openLane({ ...next, takeOver: "lead" });
    await store().append({ ...lane, laneId: "next", items: items("next", 1, 1) });
    expect(await store().openLane(laneOf(ACADEMY, lane.matchId, "lead"))).toMatchObject({
      value: { epoch: 1, cursor: 1, head: 4, lead: leadOf(next) },
    });
    await store().append({ ...lane, items: items("lead", 2, 3) });
    expect((await readAll(lane)).map(({ pos, laneId, epoch }) => [pos, laneId, epoch])).toEqual([
      [1, "desk", 0],
      [2, "lead", 1],
      [3, "desk", 0],
      [4, "next", 2],
      [5, "lead", 1],
      [6, "lead", 1],
    ]);
    const folded = foldLog(await readAll(lane));
    expect(folded.ok && folded.value.points.map(({ pos }) => pos)).toEqual([2, 4]);
    expect(folded.ok && folded.value.setAside.map(({ pos, reason }) => [pos, reason])).toEqual([
      [5, "notLead"],
      [6, "notLead"],
    ]);
  });

  it("[ES17] lets nobody take over from a lane that leads no more, from the desk's lane, or after sealing", async () => {
    const lane = await openLane();
    const ask = (laneId: string, takeOver: string) =>
      store().openLane({ ...laneOf(ACADEMY, lane.matchId, laneId), takeOver });
    await ask("second", "lead");
    const lead = leadOf(laneOf(ACADEMY, lane.matchId, "second"));
    expect(await ask("third", "lead")).toEqual({ ok: false, error: { code: "lead_taken", lead } });
    expect(await ask("third", "desk")).toEqual({ ok: false, error: { code: "lead_taken", lead } });
    expect(await ask("lead", "second")).toMatchObject({ value: { epoch: 1, lead } });
    await store().sealMatch(lane);
    expect(await ask("third", "second")).toEqual({ ok: false, error: { code: "sealed" } });
    expect(await store().head(lane)).toMatchObject({ value: { epoch: 2, leadLaneId: "second" } });
  });

  it("[ES17] of take-overs at the same moment one gets the lead, each lead has an epoch of its own, and pos stays dense", async () => {
    const lane = await openLane();
    const rivals = ["a", "b", "c", "d"];
    const ask = (laneId: string, takeOver: string) =>
      store().openLane({ ...laneOf(ACADEMY, lane.matchId, laneId), takeOver });
    const writing = store().append({ ...lane, items: items("lead", 1, 5) });
    const answers = await Promise.all(rivals.map((laneId) => ask(laneId, "lead")));
    await writing;
    const [winner, ...others] = rivals.filter((_, i) => answers[i]?.ok);
    expect(others).toEqual([]);
    const lead = leadOf(laneOf(ACADEMY, lane.matchId, winner ?? ""));
    for (const answer of answers) {
      if (!answer.ok) expect(answer.error).toEqual({ code: "lead_taken", lead });
    }
    const [loser = ""] = rivals.filter((laneId) => laneId !== winner);
    expect(await ask(loser, winner ?? "")).toMatchObject({ value: { epoch: 3 } });
    const entries = await readAll(lane);
    expect(entries.map(({ pos }) => pos)).toEqual(Array.from({ length: 8 }, (_, i) => i + 1));
    expect(
      entries.flatMap(({ entry: { body } }) =>
        body.kind === "LeadTaken" ? [[body.laneId, body.epoch]] : [],
      ),
    ).toEqual([
      [winner, 2],
      [loser, 3],
    ]);
  });

  it("[ES30] opens a second lane beside the lead, which keeps the lead, the epoch and the head's chartist", async () => {
    const lane = await openLane();
    const { matchId } = lane;
    const second = { ...laneOf(ACADEMY, matchId, "second"), level: "every" as const, second: true as const };
    const lead = leadOf(laneOf(ACADEMY, matchId, "lead"));
    const opened = await store().openLane(second);
    expect(opened).toMatchObject({ ok: true, value: { epoch: SECOND_EPOCH, cursor: 0, head: 1, lead } });
    await store().append({ ...lane, items: items("lead", 1, 1) });
    await store().append({ ...lane, laneId: "second", items: items("second", 1, 2) });
    expect((await readAll(lane)).map(({ pos, laneId, epoch }) => [pos, laneId, epoch])).toEqual([
      [1, "desk", 0],
      [2, "lead", 1],
      [3, "second", SECOND_EPOCH],
      [4, "second", SECOND_EPOCH],
    ]);
    const head = { epoch: 1, leadLaneId: "lead", chartist: lead.chartist, level: "key" };
    expect(await store().head(lane)).toMatchObject({ value: head });
    const folded = foldLog(await readAll(lane));
    expect(folded.ok && [folded.value.points.length, folded.value.setAside]).toEqual([1, []]);
  });

  it("[ES31] resumes a second lane as second, however it is asked for, and a lead lane as it is", async () => {
    const { matchId } = await openLane();
    const second = laneOf(ACADEMY, matchId, "second");
    await store().openLane({ ...second, second: true });
    const again = { value: { epoch: SECOND_EPOCH, lead: { laneId: "lead" } } };
    expect(await store().openLane({ ...second, second: true })).toMatchObject(again);
    expect(await store().openLane(second)).toMatchObject(again);
    expect(await store().openLane({ ...second, takeOver: "lead" })).toMatchObject(again);
    const lead = { ...laneOf(ACADEMY, matchId, "lead"), second: true as const };
    expect(await store().openLane(lead)).toMatchObject({ value: { epoch: 1, lead: { laneId: "lead" } } });
    const stranger = { ...second, owner: { kind: "member", id: "somebody" } } as const;
    expect(await store().openLane(stranger)).toEqual({ ok: false, error: { code: "other_owner" } });
    await store().sealMatch({ academyId: ACADEMY, matchId });
    const late = { ...laneOf(ACADEMY, matchId, "late"), second: true as const };
    expect(await store().openLane(late)).toEqual({ ok: false, error: { code: "sealed" } });
  });

  it("[ES32] opens a second lane while nobody leads, names no lead then, and leaves epoch 1 to the first that leads", async () => {
    const match = await openMatch();
    const second = { ...laneOf(ACADEMY, match.matchId, "second"), second: true as const };
    const opened = await store().openLane(second);
    expect(opened.ok && [opened.value.epoch, "lead" in opened.value]).toEqual([SECOND_EPOCH, false]);
    expect(await store().head(match)).toMatchObject({
      value: { epoch: 0, leadLaneId: null, chartist: null },
    });
    const lead = laneOf(ACADEMY, match.matchId, "lead");
    expect(await store().openLane(lead)).toMatchObject({ value: { epoch: 1, head: 1, lead: leadOf(lead) } });
    expect(await store().openLane(second)).toMatchObject({ value: { lead: leadOf(lead) } });
  });

  it("[ES18] names the chartist of every lane but the desk's", async () => {
    const lane = await openLane();
    await store().openLane({ ...laneOf(ACADEMY, lane.matchId, "next"), takeOver: "lead" });
    expect(await store().lanes(lane)).toEqual({
      ok: true,
      value: [
        { laneId: "lead", chartist: "chartist of lead" },
        { laneId: "next", chartist: "chartist of next" },
      ],
    });
    expect(await store().lanes(await newMatch())).toEqual({ ok: true, value: [] });
    expect(await store().lanes({ academyId: ACADEMY, matchId: "nowhere" })).toEqual({
      ok: false,
      error: { code: "unknown_match" },
    });
  });

  it("[ES3] lets a later session of the court resume a lane, and nobody else", async () => {
    const { matchId } = await openLane();
    const lane = laneOf(ACADEMY, matchId, "lead");
    const later = { ...lane, owner: { kind: "courtside", id: "a later session" } } as const;
    expect(await store().openLane(later)).toMatchObject({ ok: true });
    const member = { ...lane, owner: { kind: "member", id: "somebody" } } as const;
    expect(await store().openLane(member)).toEqual({ ok: false, error: { code: "other_owner" } });
    const desk = { ...lane, laneId: "desk" };
    expect(await store().openLane(desk)).toEqual({ ok: false, error: { code: "other_owner" } });
  });

  it("[ES3] keeps a member's lane to that member", async () => {
    const match = await openMatch();
    const lane = {
      ...laneOf(ACADEMY, match.matchId, "lead"),
      owner: { kind: "member", id: "m1" },
    } as const;
    await store().openLane(lane);
    expect(await store().openLane(lane)).toMatchObject({ ok: true });
    const other = { ...lane, owner: { kind: "member", id: "m2" } } as const;
    expect(await store().openLane(other)).toEqual({ ok: false, error: { code: "other_owner" } });
  });

  it("[ES3] opens no lane before the match is open, nor on an unknown match", async () => {
    const match = await newMatch();
    expect(await store().openLane(laneOf(ACADEMY, match.matchId, "lead"))).toEqual({
      ok: false,
      error: { code: "not_open" },
    });
    expect(await store().openLane(laneOf(ACADEMY, "nowhere", "lead"))).toEqual({
      ok: false,
      error: { code: "unknown_match" },
    });
  });
}
