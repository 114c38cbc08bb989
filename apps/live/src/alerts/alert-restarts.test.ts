import { describe, expect, it } from "vitest";
import {
  chartOn,
  correction,
  createAlertDay,
  idOf,
  LANE,
  listsTold,
  madeLineBall,
  noticesTold,
} from "../testing/alert-day.ts";
import type { FakePeer, Node } from "../testing/create-node.ts";
import { missedLineBalls } from "../testing/entries.ts";
import { alertKeyText } from "./alert-line-of.ts";
import type { AlertStore } from "./alert-store.ts";

const RESTARTS = 1_000;

/** Keys that a person was told of, in the answer or afterwards. */
const toldOf = (peer: FakePeer, reply: Record<string, unknown>): string[] =>
  [...(reply.notices as Parameters<typeof alertKeyText>[0][]), ...noticesTold(peer)].map(alertKeyText);

describe("alerts over restarts", () => {
  it(`[AL13, AL18] after ${RESTARTS} restarts no notice came twice to anybody`, async () => {
    const world = createAlertDay();
    const told: string[] = [];
    let n = 0;
    for (let i = 0; i < RESTARTS; i += 1) {
      const node = world.addNode();
      const people = (["coach", "director"] as const).map((who) => ({ who, peer: node.connect(who) }));
      const replies = await Promise.all(people.map(({ peer }) => peer.ask("alerts.watch", { dayId: "d1" })));
      if (i % 10 === 0) {
        const { send } = await chartOn(node);
        n += 1;
        // Five missed, five made, a correction now and then: alerts come, go and come again.
        const [missed] = missedLineBalls(n, n);
        const entry = n % 10 < 5 ? missed : madeLineBall(n);
        const fix = correction(n, { kind: "EntryVoided", target: idOf(n - 1) });
        await send([n % 13 === 0 || !entry ? fix : entry]);
      }
      await world.time.settle();
      if (i % 2 === 0) await world.time.advance(300);
      for (const [j, { who, peer }] of people.entries()) {
        told.push(...toldOf(peer, replies[j] ?? {}).map((key) => `${who} ${key}`));
        peer.close();
      }
      await node.live.stop();
    }
    expect(told.length).toBeGreaterThan(2);
    expect(new Set(told).size).toBe(told.length);
    const ledger = world.alerts.notices().map((notice) => `${notice.recipient} ${alertKeyText(notice)}`);
    expect(new Set(ledger).size).toBe(ledger.length);
    expect(ledger.length).toBe(told.length);
  }, 60_000);

  it("[AL18] a node that comes back finds what it could not write, and writes it once the database answers", async () => {
    const world = createAlertDay();
    let away = true;
    const refuse = async () => ({ ok: false, error: { code: "unavailable" } }) as const;
    const node = world.addNode(
      {},
      {
        alertsOf: (match) => (away ? refuse() : world.alerts.alertsOf(match)),
        dayAlerts: (day) => (away ? refuse() : world.alerts.dayAlerts(day)),
      },
    );
    const coach = node.connect("coach");
    expect(await coach.ask("alerts.watch", { dayId: "d1" })).toMatchObject({
      code: "unavailable",
      retry: true,
    });
    const { miss } = await chartOn(node);
    await miss(1, 4);
    await world.time.advance(3_000);
    away = false;
    await world.time.advance(2_500);
    expect(await coach.ask("alerts.watch", { dayId: "d1" })).toMatchObject({
      alerts: [{ state: "standing" }],
      notices: [{ episode: 1 }],
    });
    expect(node.faults).toEqual([]);
  });
});

describe("two nodes over one store", () => {
  /** Each call of one node waits until the other has made its own, as far as it does. */
  const slowed = (alerts: AlertStore): Partial<AlertStore> => {
    const later = async <T>(ask: () => Promise<T>): Promise<T> => {
      await new Promise((resolve) => setImmediate(resolve));
      return ask();
    };
    return {
      alertsOf: (match) => later(() => alerts.alertsOf(match)),
      writeAlerts: (write) => later(() => alerts.writeAlerts(write)),
      claimNotices: (claim) => later(() => alerts.claimNotices(claim)),
    };
  };
  const follow = async (node: Node) => {
    const peers = [node.connect("coach"), node.connect("director")];
    for (const peer of peers) await peer.ask("alerts.watch", { dayId: "d1" });
    return peers;
  };

  it("[AL11, AL13] race to raise: one row, one notice per member, and the same list on both", async () => {
    const world = createAlertDay();
    const nodes = [world.addNode(), world.addNode({}, slowed(world.alerts))] as const;
    const peers = [...(await follow(nodes[0])), ...(await follow(nodes[1]))];
    const { miss, send } = await chartOn(nodes[0]);
    await miss(1, 4);
    await world.time.advance(2_500);
    await send([correction(5, { kind: "EntryVoided", target: idOf(2) })]);
    await send([correction(6, { kind: "EntryRestored", target: idOf(2) })]);
    await miss(7, 12);
    await world.time.advance(5_000);
    const kept = await world.alerts.alertsOf({ academyId: "curlew", matchId: LANE.matchId });
    const rows = kept.ok ? kept.value : [];
    expect(new Set(rows.map(alertKeyText)).size).toBe(rows.length);
    expect(rows.filter(({ state }) => state === "standing")).toHaveLength(1);
    for (const who of ["mb1", "mb2"]) {
      const given = world.alerts.notices().filter(({ recipient }) => recipient === who);
      expect(new Set(given.map(alertKeyText)).size).toBe(given.length);
    }
    const told = peers.flatMap(noticesTold);
    expect(told.length).toBe(world.alerts.notices().length);
    expect(told.length).toBeGreaterThanOrEqual(2);
    const lists = peers.map((peer) => listsTold(peer).at(-1));
    for (const list of lists) expect(list).toEqual(lists[0]);
    expect(nodes.flatMap(({ faults }) => faults)).toEqual([]);
  });
});
