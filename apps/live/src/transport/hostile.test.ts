import { PROTOCOL_VERSION, REFUSALS, UP } from "@courtloom/protocol";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pointEntries } from "../testing/entries.ts";
import { MATCHES } from "../testing/match-day.ts";
import {
  type Client,
  createSocketBench,
  openLane,
  type Reply,
  type SocketBench,
} from "../testing/socket-bench.ts";

const SEED = 20260530;
const MESSAGES = 2_400;
/** A connection is changed before its budget is used up, so that messages are judged and not put off. */
const PER_CONNECTION = 150;
const CLOSED: ReadonlySet<unknown> = new Set([...REFUSALS, "gap", "identity_conflict", "other_incarnation"]);

interface Hostile {
  readonly person: "helper" | "otherHelper" | "wall" | "nobody";
  readonly event: string;
  readonly args: readonly unknown[];
  readonly acknowledged: boolean;
}

const deep = (depth: number): unknown => {
  let value: unknown = 1;
  for (let i = 0; i < depth; i += 1) value = [value];
  return value;
};
const events = fc.oneof(
  { arbitrary: fc.constantFrom(...Object.values(UP)), weight: 8 },
  { arbitrary: fc.constantFrom("constructor", "__proto__", "toString", "lane.close", "*"), weight: 1 },
);
const proto = fc
  .jsonValue()
  .map((inner) => JSON.parse(`{"v":1,"__proto__":${JSON.stringify(inner)}}`) as unknown);
const junk = fc.oneof(
  fc.jsonValue({ maxDepth: 4 }),
  proto,
  fc.integer({ min: 10, max: 2_000 }).map(deep),
  fc.integer({ min: 1_000, max: 40_000 }).map((length) => "x".repeat(length)),
  fc.uint8Array({ maxLength: 64 }).map((bytes) => Buffer.from(bytes)),
  fc.constantFrom(Number.MAX_SAFE_INTEGER, -1, 1e308, null, "", "1", true),
);
const version = fc.oneof({ arbitrary: fc.constant(1 as unknown), weight: 6 }, { arbitrary: junk, weight: 1 });
/** Foreign, unknown and malformed ids; never the one that the helper may chart. */
const matchId = fc.oneof(fc.constantFrom("m3x", "m4", "m9", "m0", "m1 ", "../m1"), junk);
const laneId = fc.oneof(fc.constantFrom("lane-1", "desk", "lane-9"), junk);
const entry = fc.oneof(
  junk,
  fc
    .tuple(fc.integer({ min: -2, max: 5 }), junk)
    .map(([n, body]) => ({ ...pointEntries(5, 1, 1)[0], n, body })),
);
const alertKey = (id: string) => ({
  ...{ matchId: id, playerId: `${id}-A`, rate: "lineMissed", version: 1, episode: 1 },
});
const near = fc.record(
  {
    v: version,
    matchId,
    laneId,
    incarnation: fc.oneof(fc.constant("log-1"), junk),
    level: fc.oneof(fc.constant("key"), junk),
    entries: fc.oneof(fc.array(entry, { maxLength: 60 }), junk),
    after: fc.oneof(fc.nat(), junk),
    unsent: fc.oneof(fc.nat(), junk),
    wallMs: fc.oneof(fc.nat(), junk),
    dayId: fc.oneof(fc.constantFrom("d2", "d9", "d0"), junk),
    view: fc.oneof(fc.constantFrom("staff", "wall"), junk),
    id: matchId,
    key: fc.oneof(fc.constantFrom("m4", "m9", "m0").map(alertKey), junk),
    mark: fc.oneof(fc.constant({ kind: "seen" }), junk),
  },
  { requiredKeys: [] },
);
/** Whole messages that would be taken if their match were the sender's. */
const foreign = fc
  .constantFrom("m4", "m9", "m0")
  .chain((id) =>
    fc.constantFrom<readonly [string, object]>(
      [UP.laneOpen, { v: 1, matchId: id, laneId: "lane-1", level: "key" }],
      [
        UP.laneAppend,
        { v: 1, matchId: id, laneId: "lane-1", incarnation: "log-1", entries: pointEntries(4, 1, 2) },
      ],
      [UP.laneBeat, { v: 1, matchId: id, laneId: "lane-1", unsent: 0, wallMs: 0 }],
      [UP.courtWatch, { v: 1, matchId: id, after: 0 }],
      [UP.courtRead, { v: 1, matchId: id, after: 0 }],
      [UP.boardWatch, { v: 1, dayId: "d2", view: "staff" }],
      [UP.alertsWatch, { v: 1, dayId: "d2" }],
      [UP.alertMark, { v: 1, key: alertKey(id), mark: { kind: "seen" } }],
    ),
  );
const acknowledged = fc.integer({ min: 0, max: 9 }).map((n) => n > 0);
const person = fc.constantFrom("helper", "otherHelper", "wall", "nobody" as const);
const hostile: fc.Arbitrary<Hostile> = fc.oneof(
  fc.record({ person, event: events, args: fc.array(fc.oneof(near, junk), { maxLength: 3 }), acknowledged }),
  fc.record({ person, event: events, args: near.map((message) => [message]), acknowledged }),
  fc
    .tuple(person, foreign, acknowledged, fc.constantFrom(1, 1, 1, 1, 0, PROTOCOL_VERSION + 1))
    .map(([who, [event, message], ack, v]) => ({
      person: who,
      event,
      args: [{ ...message, v }],
      acknowledged: ack,
    })),
);

let bench: SocketBench;
beforeAll(async () => {
  bench = await createSocketBench();
});
afterAll(() => bench.close());

const whole = async () =>
  JSON.stringify(
    await Promise.all(
      MATCHES.map(({ academyId, matchId: id }) =>
        bench.store.read({ academyId, matchId: id, after: 0, limit: 999 }),
      ),
    ),
  );

const isClosed = (reply: Reply, event: string): boolean => {
  const leaves = event === UP.courtLeave || event === UP.boardLeave || event === UP.alertsLeave;
  return (reply.ok === true && leaves) || (reply.ok === false && CLOSED.has(reply.code));
};

/** Sends one message; the reply, or what became of it. A message too large to be read ends the connection. */
const throwAt = async (
  { socket }: Client,
  { event, args, acknowledged: ack }: Hostile,
): Promise<Reply | "ended"> => {
  if (!ack) {
    socket.emit(event, ...args);
    return { ok: false, code: "bad_shape" };
  }
  return new Promise((resolve) => {
    const ended = (): void => resolve("ended");
    socket.once("disconnect", ended);
    socket.emit(event, ...args, (reply: Reply) => {
      socket.off("disconnect", ended);
      resolve(reply);
    });
  });
};

/** One person's messages, one after the other. */
const throwAll = async (
  who: Hostile["person"],
  messages: readonly Hostile[],
  codes: Map<string, number>,
): Promise<void> => {
  let client = await bench.connect(who);
  for (const [i, message] of messages.entries()) {
    if ((i > 0 && i % PER_CONNECTION === 0) || !client.socket.connected) {
      client.socket.disconnect();
      client = await bench.connect(who);
    }
    const reply = await throwAt(client, message);
    const code = reply === "ended" ? "ended" : String(reply.code ?? reply.ok);
    codes.set(code, (codes.get(code) ?? 0) + 1);
    if (reply !== "ended" && !isClosed(reply, message.event)) expect.fail(JSON.stringify({ message, reply }));
  }
};

describe("hostile messages over real sockets", () => {
  it(`[LV26] ${MESSAGES} messages of seed ${SEED} get closed codes only, write nothing and end nothing`, async () => {
    const phone = await bench.connect("helper");
    await openLane(phone, "m1", "lane-1");
    const before = await whole();
    const messages = fc.sample(hostile, { seed: SEED, numRuns: MESSAGES });
    bench.sessions.revoke("otherHelper", "code_expired");
    const codes = new Map<string, number>();
    const people = [...new Set(messages.map((message) => message.person))];
    await Promise.all(
      people.map((who) =>
        throwAll(
          who,
          messages.filter((message) => message.person === who),
          codes,
        ),
      ),
    );
    expect([...codes.values()].reduce((sum, count) => sum + count, 0)).toBe(MESSAGES);
    expect(await whole()).toBe(before);
    expect(bench.faults).toEqual([]);
    for (const code of [
      "bad_shape",
      "unknown_match",
      "forbidden",
      "signed_out",
      "code_expired",
      "new_version",
      "old_version",
    ]) {
      expect([code, (codes.get(code) ?? 0) > 10]).toEqual([code, true]);
    }
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    const still = await bench.connect("helper");
    const append = {
      v: 1,
      matchId: "m1",
      laneId: "lane-1",
      incarnation: "log-1",
      entries: pointEntries(1, 1, 1),
    };
    expect(await still.ask(UP.laneAppend, append)).toMatchObject({ ok: true, upTo: 1 });
  }, 120_000);

  it("[LV26] a message above the limit and a frame that is no message end that connection alone", async () => {
    const [bad, worse, good] = [
      await bench.connect("helper"),
      await bench.connect("helper"),
      await bench.connect("coach"),
    ];
    const ended = (client: Client) =>
      new Promise<string>((resolve) => client.socket.once("disconnect", resolve));
    const [first, second] = [ended(bad), ended(worse)];
    bad.socket.emit(UP.courtRead, { v: 1, matchId: "x".repeat(80_000), after: 0 }, () => undefined);
    worse.socket.io.engine.write('2["disconnect"');
    expect(["transport close", "transport error"]).toContain(await first);
    expect(["transport close", "transport error", "io server disconnect"]).toContain(await second);
    expect(await good.ask(UP.courtRead, { v: 1, matchId: "m1", after: 0 })).toMatchObject({ ok: true });
  });
});
