import { foldLog } from "@courtloom/match-log";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Appended, EntryStore, LeadLane, MatchRef, OpenLane } from "./entry-store.ts";
import { entryOf, item, items, laneOf, openingOf } from "./testing/log-fixtures.ts";

export interface StoreUnderTest {
  readonly store: EntryStore;
  /** Makes a match known, as the day desk does; the academy "curlew" is there. */
  readonly addMatch: (match: MatchRef) => Promise<void>;
  readonly close: () => Promise<void>;
}

const ACADEMY = "curlew";

const leadOf = ({ laneId, chartist, owner }: OpenLane): LeadLane => ({ laneId, chartist, owner });

/** What every entry store does, wherever it keeps its entries. */
export function entryStoreContract(name: string, make: () => Promise<StoreUnderTest>): void {
  describe(`entry store: ${name}`, () => {
    let under: StoreUnderTest;
    let count = 0;
    beforeAll(async () => {
      under = await make();
    });
    afterAll(() => under.close());

    const newMatch = async (): Promise<MatchRef> => {
      count += 1;
      const match = { academyId: ACADEMY, matchId: `match-${count}` };
      await under.addMatch(match);
      return match;
    };
    const openMatch = async (): Promise<MatchRef> => {
      const match = await newMatch();
      await under.store.openMatch({ ...match, opened: openingOf(match.matchId) });
      return match;
    };
    /** An open match whose lead is the lane `lead`. */
    const openLane = async (): Promise<MatchRef & { readonly laneId: string }> => {
      const match = await openMatch();
      await under.store.openLane(laneOf(ACADEMY, match.matchId, "lead"));
      return { ...match, laneId: "lead" };
    };
    const readAll = async (match: MatchRef) => {
      const page = await under.store.read({ ...match, after: 0, limit: 1000 });
      if (!page.ok) throw new Error(page.error.code);
      return page.value.entries;
    };

    it("[ES1] writes the opening at pos 1 in the desk's lane, and answers the same opening again", async () => {
      const match = await newMatch();
      const opened = openingOf(match.matchId);
      const first = await under.store.openMatch({ ...match, opened });
      expect(first).toMatchObject({
        ok: true,
        value: {
          head: 1,
          opening: { pos: 1, laneId: "desk", epoch: 0, entry: { v: 1, n: 1, body: opened } },
        },
      });
      expect(await under.store.openMatch({ ...match, opened })).toEqual(first);
      expect(await readAll(match)).toHaveLength(1);
    });

    it("[ES1] refuses another opening, and one of a match that nobody announced", async () => {
      const match = await openMatch();
      const opened = { ...openingOf(match.matchId), firstServer: "B" as const };
      expect(await under.store.openMatch({ ...match, opened })).toEqual({
        ok: false,
        error: { code: "already_opened" },
      });
      const unknown = { academyId: ACADEMY, matchId: "nowhere" };
      expect(await under.store.openMatch({ ...unknown, opened: openingOf("nowhere") })).toEqual({
        ok: false,
        error: { code: "unknown_match" },
      });
    });

    it("[ES2] gives the first lane the lead, and resumes it where it stopped", async () => {
      const match = await openMatch();
      const lane = laneOf(ACADEMY, match.matchId, "lead");
      const incarnation = await under.store.incarnation();
      const opened = await under.store.openLane(lane);
      expect(opened).toEqual({
        ok: true,
        value: {
          incarnation: incarnation.ok ? incarnation.value : "",
          ...{ epoch: 1, cursor: 0, head: 1 },
          lead: { laneId: "lead", chartist: "chartist of lead", owner: lane.owner },
        },
      });
      await under.store.append({ ...match, laneId: "lead", items: items("lead", 1, 4) });
      expect(await under.store.openLane(lane)).toMatchObject({ value: { epoch: 1, cursor: 4, head: 5 } });
    });

    it("[ES2] refuses a second lane while there is a lead, and names its chartist", async () => {
      const { matchId } = await openLane();
      expect(await under.store.openLane(laneOf(ACADEMY, matchId, "other"))).toEqual({
        ok: false,
        error: { code: "lead_taken", lead: leadOf(laneOf(ACADEMY, matchId, "lead")) },
      });
    });

    it("[ES17] gives the lead to a new lane that takes over, with the next epoch, and says so in the log", async () => {
      const lane = await openLane();
      await under.store.append({ ...lane, items: items("lead", 1, 2) });
      const next = laneOf(ACADEMY, lane.matchId, "next");
      const taken = await under.store.openLane({ ...next, takeOver: "lead" });
      expect(taken).toMatchObject({ value: { epoch: 2, cursor: 0, head: 4, lead: leadOf(next) } });
      const head = await under.store.head(lane);
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
      await under.store.append({ ...lane, items: items("lead", 1, 1) });
      const next = laneOf(ACADEMY, lane.matchId, "next");
      await under.store.openLane({ ...next, takeOver: "lead" });
      await under.store.append({ ...lane, laneId: "next", items: items("next", 1, 1) });
      expect(await under.store.openLane(laneOf(ACADEMY, lane.matchId, "lead"))).toMatchObject({
        value: { epoch: 1, cursor: 1, head: 4, lead: leadOf(next) },
      });
      await under.store.append({ ...lane, items: items("lead", 2, 3) });
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
        under.store.openLane({ ...laneOf(ACADEMY, lane.matchId, laneId), takeOver });
      await ask("second", "lead");
      const lead = leadOf(laneOf(ACADEMY, lane.matchId, "second"));
      expect(await ask("third", "lead")).toEqual({ ok: false, error: { code: "lead_taken", lead } });
      expect(await ask("third", "desk")).toEqual({ ok: false, error: { code: "lead_taken", lead } });
      expect(await ask("lead", "second")).toMatchObject({ value: { epoch: 1, lead } });
      await under.store.sealMatch(lane);
      expect(await ask("third", "second")).toEqual({ ok: false, error: { code: "sealed" } });
      expect(await under.store.head(lane)).toMatchObject({ value: { epoch: 2, leadLaneId: "second" } });
    });

    it("[ES17] of take-overs at the same moment one gets the lead, each lead has an epoch of its own, and pos stays dense", async () => {
      const lane = await openLane();
      const rivals = ["a", "b", "c", "d"];
      const ask = (laneId: string, takeOver: string) =>
        under.store.openLane({ ...laneOf(ACADEMY, lane.matchId, laneId), takeOver });
      const writing = under.store.append({ ...lane, items: items("lead", 1, 5) });
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

    it("[ES18] names the chartist of every lane but the desk's", async () => {
      const lane = await openLane();
      await under.store.openLane({ ...laneOf(ACADEMY, lane.matchId, "next"), takeOver: "lead" });
      expect(await under.store.lanes(lane)).toEqual({
        ok: true,
        value: [
          { laneId: "lead", chartist: "chartist of lead" },
          { laneId: "next", chartist: "chartist of next" },
        ],
      });
      expect(await under.store.lanes(await newMatch())).toEqual({ ok: true, value: [] });
      expect(await under.store.lanes({ academyId: ACADEMY, matchId: "nowhere" })).toEqual({
        ok: false,
        error: { code: "unknown_match" },
      });
    });

    it("[ES3] lets a later session of the court resume a lane, and nobody else", async () => {
      const { matchId } = await openLane();
      const lane = laneOf(ACADEMY, matchId, "lead");
      const later = { ...lane, owner: { kind: "courtside", id: "a later session" } } as const;
      expect(await under.store.openLane(later)).toMatchObject({ ok: true });
      const member = { ...lane, owner: { kind: "member", id: "somebody" } } as const;
      expect(await under.store.openLane(member)).toEqual({ ok: false, error: { code: "other_owner" } });
      const desk = { ...lane, laneId: "desk" };
      expect(await under.store.openLane(desk)).toEqual({ ok: false, error: { code: "other_owner" } });
    });

    it("[ES3] keeps a member's lane to that member", async () => {
      const match = await openMatch();
      const lane = {
        ...laneOf(ACADEMY, match.matchId, "lead"),
        owner: { kind: "member", id: "m1" },
      } as const;
      await under.store.openLane(lane);
      expect(await under.store.openLane(lane)).toMatchObject({ ok: true });
      const other = { ...lane, owner: { kind: "member", id: "m2" } } as const;
      expect(await under.store.openLane(other)).toEqual({ ok: false, error: { code: "other_owner" } });
    });

    it("[ES3] opens no lane before the match is open, nor on an unknown match", async () => {
      const match = await newMatch();
      expect(await under.store.openLane(laneOf(ACADEMY, match.matchId, "lead"))).toEqual({
        ok: false,
        error: { code: "not_open" },
      });
      expect(await under.store.openLane(laneOf(ACADEMY, "nowhere", "lead"))).toEqual({
        ok: false,
        error: { code: "unknown_match" },
      });
    });

    it("[ES4] commits a batch in order, dense after the head, and hands back what it logged", async () => {
      const lane = await openLane();
      const appended = await under.store.append({ ...lane, items: items("lead", 1, 3) });
      const logged = [1, 2, 3].map((n) => ({
        pos: n + 1,
        laneId: "lead",
        epoch: 1,
        entry: entryOf("lead", n),
      }));
      expect(appended).toEqual({ ok: true, value: { kind: "appended", upTo: 3, head: 4, logged } });
      expect((await readAll(lane)).slice(1)).toEqual(logged);
    });

    it("[ES5] takes a batch again without writing, in whole or in part", async () => {
      const lane = await openLane();
      await under.store.append({ ...lane, items: items("lead", 1, 3) });
      expect(await under.store.append({ ...lane, items: items("lead", 2, 3) })).toEqual({
        ok: true,
        value: { kind: "duplicate", upTo: 3, head: 4, logged: [] },
      });
      const rest = await under.store.append({ ...lane, items: items("lead", 2, 5) });
      expect(rest).toMatchObject({ ok: true, value: { kind: "appended", upTo: 5, head: 6 } });
      expect(rest.ok ? rest.value.logged.map(({ entry }) => entry.n) : []).toEqual([4, 5]);
    });

    it("[ES6] knows an entry again whatever the order of its members", async () => {
      const lane = await openLane();
      await under.store.append({ ...lane, items: [item("lead", 1)] });
      const { body, ...rest } = entryOf("lead", 1);
      const turned = { body, ...Object.fromEntries(Object.entries(rest).reverse()) } as typeof rest & {
        body: typeof body;
      };
      expect(await under.store.append({ ...lane, items: [{ n: 1, entry: turned }] })).toMatchObject({
        value: { kind: "duplicate" },
      });
    });

    it("[ES7] answers a hole with the number it needs, and writes nothing of that batch", async () => {
      const lane = await openLane();
      await under.store.append({ ...lane, items: items("lead", 1, 2) });
      expect(await under.store.append({ ...lane, items: items("lead", 5, 6) })).toEqual({
        ok: false,
        error: { code: "gap", expect: 3 },
      });
      const holed = [item("lead", 3), item("lead", 5)];
      expect(await under.store.append({ ...lane, items: holed })).toEqual({
        ok: false,
        error: { code: "gap", expect: 4 },
      });
      expect(await readAll(lane)).toHaveLength(3);
    });

    it("[ES8] refuses another entry under a number that is taken, and an id that is taken", async () => {
      const lane = await openLane();
      await under.store.append({ ...lane, items: items("lead", 1, 2) });
      expect(await under.store.append({ ...lane, items: [item("lead", 2, "-other")] })).toEqual({
        ok: false,
        error: { code: "identity_conflict", n: 2 },
      });
      const sameId = { n: 3, entry: { ...entryOf("lead", 3), id: entryOf("lead", 1).id } };
      expect(await under.store.append({ ...lane, items: [sameId] })).toEqual({
        ok: false,
        error: { code: "identity_conflict", n: 3 },
      });
      const twice = [item("lead", 3), { n: 4, entry: { ...entryOf("lead", 4), id: entryOf("lead", 3).id } }];
      expect(await under.store.append({ ...lane, items: twice })).toEqual({
        ok: false,
        error: { code: "identity_conflict", n: 4 },
      });
      expect(await readAll(lane)).toHaveLength(3);
    });

    it("[ES9] keeps a rejected item aside, goes on after it, and knows it again", async () => {
      const lane = await openLane();
      const rejected = {
        n: 2,
        rejected: { code: "bad_shape", raw: { body: "?\u0000\ud800", n: 2 } },
      } as const;
      const batch = [item("lead", 1), rejected, item("lead", 3)];
      const first = await under.store.append({ ...lane, items: batch });
      expect(first).toMatchObject({ ok: true, value: { kind: "appended", upTo: 3, head: 3 } });
      expect((await readAll(lane)).map(({ pos, entry }) => [pos, entry.n])).toEqual([
        [1, 1],
        [2, 1],
        [3, 3],
      ]);
      expect(await under.store.append({ ...lane, items: batch })).toMatchObject({
        value: { kind: "duplicate", upTo: 3 },
      });
      const other = { n: 2, rejected: { code: "bad_shape", raw: "another" } } as const;
      expect(await under.store.append({ ...lane, items: [other] })).toMatchObject({
        error: { code: "identity_conflict", n: 2 },
      });
    });

    it("[ES9] keeps a rejected item that is nested beyond measure", async () => {
      const lane = await openLane();
      const raw: unknown = JSON.parse(`${"[".repeat(14_000)}${"]".repeat(14_000)}`);
      const batch = [{ n: 1, rejected: { code: "bad_shape", raw } } as const];
      expect(await under.store.append({ ...lane, items: batch })).toMatchObject({
        ok: true,
        value: { kind: "appended", upTo: 1, head: 1, logged: [] },
      });
    });

    it("[ES4] appends to lanes that are open, and to nothing else", async () => {
      const lane = await openLane();
      const append = (match: MatchRef, laneId: string) =>
        under.store.append({ ...match, laneId, items: [item("x", 1)] });
      expect(await append(lane, "never-opened")).toEqual({ ok: false, error: { code: "unknown_lane" } });
      expect(await append(lane, "desk")).toEqual({ ok: false, error: { code: "unknown_lane" } });
      expect(await append(await newMatch(), "lead")).toEqual({ ok: false, error: { code: "unknown_lane" } });
      const nowhere = { academyId: ACADEMY, matchId: "nowhere" };
      expect(await append(nowhere, "lead")).toEqual({ ok: false, error: { code: "unknown_match" } });
    });

    it("[ES4] gives each pos once when many batches come at the same time", async () => {
      const lane = await openLane();
      const sizes = [1, 3, 7, 2, 12, 5, 9, 4];
      const batches = sizes.map((to) => under.store.append({ ...lane, items: items("lead", 1, to) }));
      const desks = sizes.map((_, i) =>
        under.store.appendDesk({ ...lane, body: { kind: "PointReplayed" }, entryId: `desk-${i}` }),
      );
      const answers = await Promise.all([...batches, ...desks]);
      const logged = answers.flatMap((answer) => (answer.ok ? (answer.value as Appended).logged : []));
      expect(answers.every(({ ok }) => ok)).toBe(true);
      expect(logged).toHaveLength(12 + sizes.length);
      const entries = await readAll(lane);
      expect(entries.map(({ pos }) => pos)).toEqual(
        Array.from({ length: 13 + sizes.length }, (_, i) => i + 1),
      );
      expect(entries.filter(({ laneId }) => laneId === "lead").map(({ entry }) => entry.n)).toEqual(
        Array.from({ length: 12 }, (_, i) => i + 1),
      );
    });

    it("[ES10] writes for the desk with epoch 0, once per id", async () => {
      const lane = await openLane();
      const entry = { ...lane, body: { kind: "PointReplayed" }, entryId: "desk-entry" } as const;
      expect(await under.store.appendDesk(entry)).toMatchObject({
        ok: true,
        value: { kind: "appended", upTo: 2, head: 2, logged: [{ pos: 2, laneId: "desk", epoch: 0 }] },
      });
      expect(await under.store.appendDesk(entry)).toEqual({
        ok: true,
        value: { kind: "duplicate", upTo: 2, head: 2, logged: [] },
      });
      expect(await under.store.appendDesk({ ...entry, ...(await newMatch()) })).toEqual({
        ok: false,
        error: { code: "not_open" },
      });
    });

    it("[ES11] seals once; a lane that exists still brings what it charted, a new one is refused", async () => {
      const lane = await openLane();
      await under.store.append({ ...lane, items: items("lead", 1, 2) });
      expect(await under.store.sealMatch(lane)).toMatchObject({ value: { kind: "appended", head: 4 } });
      expect(await under.store.sealMatch(lane)).toMatchObject({ value: { kind: "duplicate", head: 4 } });
      expect(await under.store.head(lane)).toMatchObject({ value: { sealed: true, pos: 4 } });
      expect(await under.store.openLane(laneOf(ACADEMY, lane.matchId, "lead"))).toMatchObject({ ok: true });
      expect(await under.store.append({ ...lane, items: items("lead", 3, 3) })).toMatchObject({
        value: { kind: "appended", upTo: 3, head: 5 },
      });
      const sealedEarly = await openMatch();
      await under.store.sealMatch(sealedEarly);
      expect(await under.store.openLane(laneOf(ACADEMY, sealedEarly.matchId, "lead"))).toEqual({
        ok: false,
        error: { code: "sealed" },
      });
    });

    it("[ES12] reads pages, the end, and a match that is not open", async () => {
      const lane = await openLane();
      await under.store.append({ ...lane, items: items("lead", 1, 5) });
      const page = await under.store.read({ ...lane, after: 2, limit: 3 });
      expect(page.ok ? page.value.entries.map(({ pos }) => pos) : []).toEqual([3, 4, 5]);
      expect(page).toMatchObject({ value: { head: 6 } });
      expect(await under.store.read({ ...lane, after: 6, limit: 3 })).toEqual({
        ok: true,
        value: { entries: [], head: 6 },
      });
      expect(await under.store.read({ ...(await newMatch()), after: 0, limit: 3 })).toEqual({
        ok: true,
        value: { entries: [], head: 0 },
      });
    });

    it("[ES13] tells which heads changed since it was asked", async () => {
      const lane = await openLane();
      const first = await under.store.heads();
      if (!first.ok) throw new Error("no heads");
      expect(first.value.heads).toContainEqual(
        expect.objectContaining({
          ...{ academyId: ACADEMY, matchId: lane.matchId },
          pos: 1,
          leadLaneId: "lead",
        }),
      );
      await under.store.append({ ...lane, items: items("lead", 1, 2) });
      await under.store.sealMatch(lane);
      const next = await under.store.heads(first.value.next);
      const changed = next.ok ? next.value.heads.find(({ matchId }) => matchId === lane.matchId) : undefined;
      const head = await under.store.head(lane);
      expect(changed).toEqual(head.ok ? head.value : undefined);
      expect(changed).toMatchObject({ pos: 4, sealed: true, chartist: "chartist of lead", level: "key" });
      const open = await under.store.heads();
      expect(open.ok && open.value.heads.some(({ matchId }) => matchId === lane.matchId)).toBe(false);
    });

    it("[ES13] has a head for a match that waits", async () => {
      const match = await newMatch();
      expect(await under.store.head(match)).toMatchObject({
        ok: true,
        value: { ...match, pos: 0, epoch: 0, leadLaneId: null, chartist: null, sealed: false, heardMs: null },
      });
      expect(await under.store.head({ academyId: ACADEMY, matchId: "nowhere" })).toEqual({
        ok: false,
        error: { code: "unknown_match" },
      });
    });

    it("[ES14] tells listeners of the highest pos, until they stop", async () => {
      const { store } = under;
      const heard = new Map<string, number>();
      let wake = (): void => undefined;
      const until = (key: string, pos: number) =>
        new Promise<void>((resolve) => {
          wake = () => heard.get(key) === pos && resolve();
          wake();
        });
      const listening = await store.listen(({ matchId, pos }) => {
        heard.set(matchId, pos);
        wake();
      });
      if (!listening.ok) throw new Error("not listening");
      for (const pos of [2, 3, 4]) store.notify({ matchId: "hinted", pos });
      await until("hinted", 4);
      await listening.value();
      const again = await store.listen(({ matchId, pos }) => {
        heard.set(`again ${matchId}`, pos);
        wake();
      });
      store.notify({ matchId: "hinted", pos: 5 });
      await until("again hinted", 5);
      expect(heard.get("hinted")).toBe(4);
      await (again.ok ? again.value() : undefined);
    });

    it("[ES16] keeps the latest word of each phone", async () => {
      const lane = await openLane();
      const word = (heardMs: number, unsent: number) => ({
        academyId: ACADEMY,
        matchId: lane.matchId,
        heardMs,
        unsent,
      });
      const nowhere = { academyId: ACADEMY, matchId: "nowhere", heardMs: 1, unsent: 1 };
      await under.store.recordHeard([word(1_780_000_000_500, 3), word(1_780_000_000_400, 9), nowhere]);
      expect(await under.store.head(lane)).toMatchObject({
        value: { heardMs: 1_780_000_000_500, unsent: 3 },
      });
      await under.store.recordHeard([word(1_780_000_000_450, 7)]);
      expect(await under.store.head(lane)).toMatchObject({
        value: { heardMs: 1_780_000_000_500, unsent: 3 },
      });
      await under.store.recordHeard([word(1_780_000_000_600, 0)]);
      expect(await under.store.head(lane)).toMatchObject({
        value: { heardMs: 1_780_000_000_600, unsent: 0 },
      });
    });
  });
}
