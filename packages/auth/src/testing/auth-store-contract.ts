import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { AuthStore, CodeRow } from "../auth-store.ts";
import {
  type ContractAcademy,
  type ContractHarness,
  makeCode,
  makeSession,
  NOW,
  unique,
} from "./contract-harness.ts";
import { handOversContract } from "./hand-overs-contract.ts";

const found = ({ academyId, codeId, kind, dayId, courtId, expiresMs, revokedMs }: CodeRow) => ({
  academyId,
  codeId,
  kind,
  dayId,
  courtId,
  expiresMs,
  revokedMs,
});

/** What every `AuthStore` must do; run by the one in memory and the one on disk. */
export const describeAuthStore = (name: string, open: () => Promise<ContractHarness>): void => {
  describe(name, () => {
    let harness: ContractHarness;
    let store: AuthStore;
    let own: ContractAcademy;
    let other: ContractAcademy;
    let demo: ContractAcademy;

    beforeAll(async () => {
      harness = await open();
      store = harness.store;
      expect(await store.hasDirector()).toBe(false);
      expect(await store.demoDirector()).toBeUndefined();
      demo = await harness.makeAcademy(true);
      expect(await store.hasDirector()).toBe(false);
      own = await harness.makeAcademy(false);
      other = await harness.makeOther();
    }, 60_000);
    afterAll(async () => harness?.close());

    it("[AU9] finds the membership a user acts with, and none for others", async () => {
      expect(await store.membershipOf(own.userId)).toEqual({
        academyId: own.academyId,
        memberId: own.memberId,
        name: "Ada Finch",
        role: "director",
      });
      expect(await store.membershipOf("nobody")).toBeUndefined();
    });

    it("[AU10] knows the demonstration's director and whether there is a real one", async () => {
      expect(await store.demoDirector()).toEqual({ academyId: demo.academyId, userId: demo.userId });
      expect(await store.hasDirector()).toBe(true);
    });

    it("[AU11] keeps a code and gives it back by its hash", async () => {
      const code = makeCode(own);
      expect(await store.addCode(code)).toBe(true);
      expect(await store.findCode(code.codeHash)).toEqual(found(code));
      expect(await store.findCode("no such hash")).toBeUndefined();
    });

    it("[AU11] refuses a second code with the same hash, whoever's it is", async () => {
      const code = makeCode(own);
      await store.addCode(code);
      expect(await store.addCode(makeCode(other, { codeHash: code.codeHash }))).toBe(false);
      expect(await store.findCode(code.codeHash)).toEqual(found(code));
    });

    it("[AU12] lists a day's usable codes, oldest first, with all that was kept", async () => {
      const day = await harness.makeOther();
      const wall = makeCode(day, { kind: "wall", courtId: null });
      const court = makeCode(day);
      const over = makeCode(day, { expiresMs: NOW });
      const revoked = makeCode(day);
      for (const code of [wall, court, over, revoked]) await store.addCode(code);
      await store.revokeCode({ academyId: day.academyId, codeId: revoked.codeId, atMs: NOW });
      const query = { academyId: day.academyId, dayId: day.dayId, nowMs: NOW };
      expect(await store.activeCodes(query)).toEqual([wall, court]);
    });

    it("[AU12] keeps the first time of a revocation", async () => {
      const code = makeCode(own);
      await store.addCode(code);
      const ref = { academyId: own.academyId, codeId: code.codeId };
      expect(await store.revokeCode({ ...ref, atMs: NOW + 1 })).toBe(true);
      expect(await store.revokeCode({ ...ref, atMs: NOW + 2 })).toBe(true);
      expect((await store.findCode(code.codeHash))?.revokedMs).toBe(NOW + 1);
    });

    it("[AU13] finds a session with its code by the token's hash", async () => {
      const code = makeCode(own);
      const session = makeSession(code);
      await store.addCode(code);
      await store.openCourtside(session);
      expect(await store.findCourtside(session.tokenHash)).toEqual({
        ...found(code),
        sessionId: session.sessionId,
        name: "Wren",
      });
      expect(await store.findCourtside("no such token")).toBeUndefined();
    });

    it("[AU13] ends a session with its own or its code's end, whichever comes first", async () => {
      const code = makeCode(own);
      const brief = makeSession(code, { expiresMs: NOW + 10 });
      const gone = makeSession(code);
      const rest = makeSession(code);
      await store.addCode(code);
      for (const session of [brief, gone, rest]) await store.openCourtside(session);
      expect((await store.findCourtside(brief.tokenHash))?.expiresMs).toBe(NOW + 10);
      const ref = { academyId: own.academyId, sessionId: gone.sessionId };
      expect(await store.revokeCourtside({ ...ref, atMs: NOW + 5 })).toBe(true);
      expect((await store.findCourtside(gone.tokenHash))?.revokedMs).toBe(NOW + 5);
      expect((await store.findCourtside(rest.tokenHash))?.revokedMs).toBeNull();
      await store.revokeCode({ academyId: own.academyId, codeId: code.codeId, atMs: NOW + 7 });
      expect((await store.findCourtside(rest.tokenHash))?.revokedMs).toBe(NOW + 7);
      expect((await store.findCourtside(gone.tokenHash))?.revokedMs).toBe(NOW + 5);
    });

    it("[AU13] lists a day's sessions that are not over", async () => {
      const day = await harness.makeOther();
      const code = makeCode(day);
      const [first, second, over] = [makeSession(code), makeSession(code), makeSession(code)];
      await store.addCode(code);
      for (const session of [first, second, over]) await store.openCourtside(session);
      await store.revokeCourtside({ academyId: day.academyId, sessionId: over.sessionId, atMs: NOW });
      const listed = await store.activeCourtside({ academyId: day.academyId, dayId: day.dayId, nowMs: NOW });
      expect(listed).toEqual(
        [first, second].map(({ sessionId, openedMs }) => ({
          ...found(code),
          sessionId,
          name: "Wren",
          openedMs,
        })),
      );
    });

    it("[AU14] neither lists nor revokes what is another academy's", async () => {
      const code = makeCode(own);
      const session = makeSession(code);
      await store.addCode(code);
      await store.openCourtside(session);
      const { academyId } = other;
      expect(await store.activeCodes({ academyId, dayId: own.dayId, nowMs: NOW })).toEqual([]);
      expect(await store.activeCourtside({ academyId, dayId: own.dayId, nowMs: NOW })).toEqual([]);
      expect(await store.revokeCode({ academyId, codeId: code.codeId, atMs: NOW })).toBe(false);
      expect(await store.revokeCourtside({ academyId, sessionId: session.sessionId, atMs: NOW })).toBe(false);
      expect((await store.findCourtside(session.tokenHash))?.revokedMs).toBeNull();
    });

    handOversContract(() => ({ ...harness, own, other }));

    it("[AU15] counts tries in a window that opens with the first", async () => {
      const key = unique("key");
      expect(await store.takeTry(key, 1000, NOW)).toEqual({ count: 1, resetMs: NOW + 1000 });
      expect(await store.takeTry(key, 1000, NOW + 999)).toEqual({ count: 2, resetMs: NOW + 1000 });
      expect(await store.takeTry(key, 1000, NOW + 1000)).toEqual({ count: 1, resetMs: NOW + 2000 });
    });

    it("[AU15] counts every one of many tries at the same moment", async () => {
      const key = unique("key");
      const takes = await Promise.all(Array.from({ length: 20 }, () => store.takeTry(key, 1000, NOW)));
      const counts = takes.map(({ count }) => count).sort((a, b) => a - b);
      expect(counts).toEqual(Array.from({ length: 20 }, (_, at) => at + 1));
    });

    it("[AU15] gives a try back, never below none, and forgets on request", async () => {
      const key = unique("key");
      await store.returnTry(key);
      await store.takeTry(key, 1000, NOW);
      await store.returnTry(key);
      await store.returnTry(key);
      expect((await store.takeTry(key, 1000, NOW)).count).toBe(1);
      await store.takeTry(key, 1000, NOW);
      await store.clearTries(key);
      expect((await store.takeTry(key, 1000, NOW)).count).toBe(1);
    });
  });
};
