import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { AlertKey, AlertStore, NoticeClaim, StoredAlert, StoredMark } from "./alert-store.ts";
import type { MatchRef } from "./entry-store.ts";

export interface AlertStoreUnderTest {
  readonly store: AlertStore;
  /** Makes a match of the academy "curlew" known; "player-a" and "player-b" are there. Gives its day. */
  readonly addMatch: (match: MatchRef) => Promise<string>;
  readonly close: () => Promise<void>;
}

const ACADEMY = "curlew";
const NOW_MS = 1_780_000_000_000;

const alertOf = (matchId: string, episode: number, changes: Partial<StoredAlert> = {}): StoredAlert => ({
  matchId,
  playerId: "player-a",
  rate: "lineMissed",
  version: 1,
  episode,
  side: "A",
  raisedEntryId: `point-${episode}`,
  raisedPos: 9 + episode,
  raisedMs: NOW_MS + episode,
  state: "standing",
  pos: 20,
  said: {
    match: { x: 10, n: 14, offPlan: 8 },
    since: { x: 9, n: 10, set: 2, games: [2, 1] },
    usual: 0.3,
    source: "own",
    strength: 1,
    set: 2,
    isOver: false,
    isDue: true,
    breaks: 6,
  },
  ...changes,
});

const keyOf = ({ matchId, playerId, rate, version, episode }: AlertKey): AlertKey => ({
  matchId,
  playerId,
  rate,
  version,
  episode,
});

const claimOf = (
  matchId: string,
  episodes: readonly number[],
  more: Partial<NoticeClaim> = {},
): NoticeClaim => ({
  academyId: ACADEMY,
  matchId,
  recipient: "coach-1",
  channel: "app",
  alerts: episodes.map((episode) => keyOf(alertOf(matchId, episode))),
  atBreak: 6,
  most: { atBreak: 3, inMatch: 5 },
  atMs: NOW_MS,
  ...more,
});

/** What every alert store does, wherever it keeps its alerts. */
export function alertStoreContract(name: string, make: () => Promise<AlertStoreUnderTest>): void {
  describe(`alert store: ${name}`, () => {
    let under: AlertStoreUnderTest;
    let count = 0;
    beforeAll(async () => {
      under = await make();
    });
    afterAll(() => under.close());

    const newMatch = async () => {
      count += 1;
      const matchId = `alerts-${count}`;
      const dayId = await under.addMatch({ academyId: ACADEMY, matchId });
      return { matchId, dayId };
    };
    const write = async (matchId: string, ...alerts: readonly StoredAlert[]) => {
      const written = await under.store.writeAlerts({ academyId: ACADEMY, matchId, alerts });
      if (!written.ok) throw new Error(written.error.code);
      return written.value;
    };
    const claim = async (asked: NoticeClaim): Promise<readonly number[]> => {
      const claimed = await under.store.claimNotices(asked);
      if (!claimed.ok) throw new Error(claimed.error.code);
      return claimed.value.map(({ episode }) => episode);
    };

    it("[AL10] gives back what was written, once, in order", async () => {
      const { matchId } = await newMatch();
      const alerts = [alertOf(matchId, 2), alertOf(matchId, 1), alertOf(matchId, 10)];
      const { since: _, ...bare } = alertOf(matchId, 1).said;
      const other = alertOf(matchId, 1, { playerId: "player-b", side: "B", said: bare });
      await write(matchId, ...alerts, other);
      const kept = await write(matchId, ...alerts);
      expect(kept).toEqual([alerts[1], alerts[0], alerts[2], other]);
      expect(await under.store.alertsOf({ academyId: ACADEMY, matchId })).toEqual({ ok: true, value: kept });
      expect(await under.store.alertsOf({ academyId: "heron", matchId })).toEqual({ ok: true, value: [] });
    });

    it("[AL10] keeps when and by what an alert was raised, whatever is said later", async () => {
      const { matchId } = await newMatch();
      await write(matchId, alertOf(matchId, 1));
      const said = { ...alertOf(matchId, 1).said, strength: 0.4 };
      const later = { state: "easing", pos: 31, said } as const;
      const moved = { raisedEntryId: "another", raisedMs: NOW_MS + 999, raisedPos: 25 };
      expect(await write(matchId, alertOf(matchId, 1, { ...later, ...moved }))).toEqual([
        alertOf(matchId, 1, later),
      ]);
    });

    it("[AL11] takes nothing from an older log, and a withdrawn alert stays withdrawn", async () => {
      const { matchId } = await newMatch();
      await write(matchId, alertOf(matchId, 1, { pos: 30 }));
      const [same] = await write(matchId, alertOf(matchId, 1, { pos: 29, state: "closed" }));
      expect(same).toMatchObject({ pos: 30, state: "standing" });
      const withdrawn = { atMs: NOW_MS + 5_000, entryId: "correction", laneId: "lane-1" };
      const gone = alertOf(matchId, 1, { pos: 31, state: "withdrawn", withdrawn });
      expect(await write(matchId, gone)).toEqual([gone]);
      expect(await write(matchId, alertOf(matchId, 1, { pos: 40 }))).toEqual([gone]);
      const silently = alertOf(matchId, 2, { state: "withdrawn", withdrawn: { atMs: NOW_MS } });
      expect(await write(matchId, silently)).toEqual([gone, silently]);
    });

    it("[AL12] reads a day's alerts with their marks, and those of no other day", async () => {
      const [one, other] = [await newMatch(), await newMatch()];
      await write(one.matchId, alertOf(one.matchId, 1), alertOf(one.matchId, 2));
      await write(other.matchId, alertOf(other.matchId, 1));
      const marks: StoredMark[] = [
        { kind: "seen", by: "coach-1", atMs: NOW_MS, details: {} },
        {
          kind: "snooze",
          by: "coach-1",
          atMs: NOW_MS + 1,
          details: { reason: "Rain", until: "set", set: 2 },
        },
        { kind: "assign", by: "coach-1", atMs: NOW_MS + 2, details: { memberId: null } },
      ];
      for (const mark of marks)
        expect(
          await under.store.addMark({ academyId: ACADEMY, key: keyOf(alertOf(one.matchId, 2)), mark }),
        ).toEqual({ ok: true, value: true });
      expect(await under.store.dayAlerts({ academyId: ACADEMY, dayId: one.dayId })).toEqual({
        ok: true,
        value: [
          { ...alertOf(one.matchId, 1), marks: [] },
          { ...alertOf(one.matchId, 2), marks },
        ],
      });
      expect(await under.store.dayAlerts({ academyId: ACADEMY, dayId: "no day" })).toEqual({
        ok: true,
        value: [],
      });
    });

    it("[AL13] claims a notice for a person once, however often and from wherever it is asked", async () => {
      const { matchId } = await newMatch();
      await write(matchId, alertOf(matchId, 1));
      const asks = Array.from({ length: 8 }, () => claim(claimOf(matchId, [1])));
      expect((await Promise.all(asks)).flat()).toEqual([1]);
      expect(await claim(claimOf(matchId, [1], { atBreak: 9 }))).toEqual([]);
      expect(await claim(claimOf(matchId, [1], { recipient: "coach-2" }))).toEqual([1]);
    });

    it("[AL13] claims the most pressing first, three at a change of ends and five in the match", async () => {
      const { matchId } = await newMatch();
      await write(matchId, ...[1, 2, 3, 4, 5, 6].map((episode) => alertOf(matchId, episode)));
      expect(await claim(claimOf(matchId, [4, 2, 6, 1]))).toEqual([4, 2, 6]);
      expect(await claim(claimOf(matchId, [1, 4]))).toEqual([]);
      expect(await claim(claimOf(matchId, [4, 1, 3, 5], { atBreak: 7 }))).toEqual([1, 3]);
      expect(await claim(claimOf(matchId, [5], { atBreak: 8 }))).toEqual([]);
    });

    it("[AL13, AL16] keeps the ceiling though many ask at once", async () => {
      const { matchId } = await newMatch();
      await write(matchId, ...[1, 2, 3, 4, 5, 6].map((episode) => alertOf(matchId, episode)));
      const asks = [1, 2, 3, 4, 5, 6].map((episode) => claim(claimOf(matchId, [episode])));
      expect((await Promise.all(asks)).flat()).toHaveLength(3);
    });

    it("[AL13] claims nothing of an alert that is over, withdrawn or not there", async () => {
      const { matchId } = await newMatch();
      const withdrawn = { atMs: NOW_MS };
      await write(
        matchId,
        alertOf(matchId, 1, { state: "closed" }),
        alertOf(matchId, 2, { state: "withdrawn", withdrawn }),
        alertOf(matchId, 3, { state: "easing" }),
      );
      expect(await claim(claimOf(matchId, [1, 2, 3, 4]))).toEqual([3]);
    });

    it("[AL14] marks no alert that is not there, and keeps marks made at once", async () => {
      const { matchId, dayId } = await newMatch();
      await write(matchId, alertOf(matchId, 1));
      const mark: StoredMark = { kind: "useful", by: "coach-1", atMs: NOW_MS, details: { useful: false } };
      const add = (academyId: string, episode: number) =>
        under.store.addMark({ academyId, key: keyOf(alertOf(matchId, episode)), mark });
      expect(await add(ACADEMY, 2)).toEqual({ ok: true, value: false });
      expect(await add("heron", 1)).toEqual({ ok: true, value: false });
      await Promise.all(Array.from({ length: 6 }, () => add(ACADEMY, 1)));
      const day = await under.store.dayAlerts({ academyId: ACADEMY, dayId });
      expect(day.ok && day.value[0]?.marks).toHaveLength(6);
    });
  });
}
