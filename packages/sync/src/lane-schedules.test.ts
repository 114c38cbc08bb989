import type { Entry, LoggedEntry } from "@courtloom/match-log";
import type { LaneAppend, LaneAppendReply, LaneOpenReply } from "@courtloom/protocol";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stepLane } from "./lane-machine.ts";
import type { LaneAction, LaneEnv, LaneEvent, LaneState } from "./lane-state.ts";
import { startLane } from "./start-lane.ts";

/** A server that keeps the rules of a lane and nothing else. */
const makeServer = () => {
  let incarnation = 1;
  let lanes = new Map<string, Entry[]>();
  const lane = (laneId: string) => lanes.get(laneId) ?? [];
  const open = (laneId: string): LaneOpenReply => ({
    ok: true,
    incarnation: `inc-${incarnation}`,
    epoch: 1,
    cursor: lane(laneId).length,
    head: 1,
    opening: { pos: 1 } as LoggedEntry,
    chartist: "Ioan P.",
    leads: true,
  });
  const append = (message: LaneAppend): LaneAppendReply => {
    if (message.incarnation !== `inc-${incarnation}`)
      return { ok: false, code: "other_incarnation", incarnation: `inc-${incarnation}` };
    const held = [...lane(message.laneId)];
    for (const entry of message.entries) {
      const there = held[entry.n - 1];
      if (there && there.id !== entry.id) return { ok: false, code: "identity_conflict", n: entry.n };
      if (there) continue;
      if (entry.n > held.length + 1) return { ok: false, code: "gap", expect: held.length + 1 };
      held.push(entry);
    }
    lanes.set(message.laneId, held);
    return { ok: true, kind: "appended", upTo: held.length, head: 1, rejected: [] };
  };
  const restore = (keep: number) => {
    incarnation += 1;
    lanes = new Map([...lanes].map(([id, held]) => [id, held.slice(0, keep)]));
  };
  /** Another page writes in the same lane. */
  const intrude = (laneId: string, id: string) => {
    const held = lane(laneId);
    lanes.set(laneId, [
      ...held,
      { v: 1, id, n: held.length + 1, atMs: 0, wallMs: 0, body: { kind: "PointReplayed" } },
    ]);
  };
  return { open, append, restore, intrude, all: () => [...lanes.values()].flat() };
};

/** A phone whose storage survives the page; every waiting action is carried out when the schedule says so. */
const makePhone = (server: ReturnType<typeof makeServer>) => {
  let count = 1;
  const env: LaneEnv = {
    random: () => 0.5,
    wallMs: () => 0,
    laneId: () => {
      count += 1;
      return `lane-${count}`;
    },
  };
  const record = {
    laneId: "lane-1",
    matchId: "m",
    courtName: "Court 1",
    chartist: "Ioan P.",
    names: { A: "Noor V.", B: "Elsbeth K." },
    level: "every",
    acked: 0,
    epoch: 0,
    rejected: [],
    startedWallMs: 0,
  } as const;
  let disk = { record: startLane(record, []).record, entries: new Map<string, Entry[]>() };
  let state: LaneState = startLane(record, []);
  let queue: LaneAction[] = [];
  const dispatch = (event: LaneEvent) => {
    const step = stepLane(state, event, env);
    state = step.state;
    queue.push(...step.actions);
  };
  const onDisk = (laneId: string) => disk.entries.get(laneId) ?? [];
  const carryOut = (action: LaneAction, answered: boolean) => {
    switch (action.type) {
      case "store":
        disk.entries.set(action.laneId, [...onDisk(action.laneId), action.entry]);
        return dispatch({ type: "stored", laneId: action.laneId, n: action.entry.n, safe: true });
      case "saveLane":
        if (action.record.laneId === disk.record.laneId) disk = { ...disk, record: action.record };
        return;
      case "fork":
        disk = { ...disk, record: action.opened };
        disk.entries.set(action.opened.laneId, [...action.entries]);
        return dispatch({
          type: "forkStored",
          laneId: action.opened.laneId,
          count: action.entries.length,
          safe: true,
        });
      case "sendOpen": {
        const reply = server.open(action.message.laneId);
        const lost = { ok: false, code: "unavailable", retry: true } as const;
        return dispatch({ type: "openAnswered", request: action.request, reply: answered ? reply : lost });
      }
      case "sendAppend": {
        const reply = server.append(action.message);
        const lost = { ok: false, code: "unavailable", retry: true } as const;
        return dispatch({ type: "appendAnswered", request: action.request, reply: answered ? reply : lost });
      }
      case "retryIn":
        return dispatch({ type: "retryDue" });
      default:
        return;
    }
  };
  return {
    dispatch,
    /** Does the oldest waiting thing; `answered` false loses the server's answer on the way back. */
    work: (answered: boolean) => {
      const action = queue.shift();
      if (action) carryOut(action, answered);
      return action !== undefined;
    },
    reload: () => {
      queue = [];
      state = startLane(disk.record, onDisk(disk.record.laneId));
    },
    held: () => [...new Set([...disk.entries.values()].flat().map((entry) => entry.id))],
    laneId: () => state.record.laneId,
  };
};

const steps = fc.array(
  fc.oneof(
    { weight: 6, arbitrary: fc.constant("chart") },
    { weight: 8, arbitrary: fc.constant("work") },
    { weight: 2, arbitrary: fc.constant("workLost") },
    { weight: 2, arbitrary: fc.constant("up") },
    { weight: 2, arbitrary: fc.constant("down") },
    { weight: 1, arbitrary: fc.constant("reload") },
    { weight: 1, arbitrary: fc.constant("restore") },
    { weight: 1, arbitrary: fc.constant("intrude") },
  ),
  { maxLength: 120 },
);

describe("a lane under faults", () => {
  it("[SY16] ends with everything that was stored on the server, once, whatever happened on the way", () => {
    fc.assert(
      fc.property(steps, fc.nat({ max: 5 }), (schedule, keep) => {
        const server = makeServer();
        const phone = makePhone(server);
        let charted = 0;
        const act: Record<string, () => void> = {
          chart: () => {
            charted += 1;
            phone.dispatch({
              type: "charted",
              id: `e${charted}`,
              atMs: 0,
              wallMs: 0,
              body: { kind: "PointReplayed" },
            });
          },
          work: () => void phone.work(true),
          workLost: () => void phone.work(false),
          up: () => phone.dispatch({ type: "linkUp" }),
          down: () => phone.dispatch({ type: "linkDown" }),
          reload: () => phone.reload(),
          restore: () => server.restore(keep),
          intrude: () => server.intrude(phone.laneId(), `other${charted}-${Math.floor(charted / 3)}`),
        };
        for (const step of schedule) act[step]?.();
        // The signal comes back and stays; one more entry makes a silent difference show.
        phone.dispatch({ type: "linkDown" });
        phone.dispatch({ type: "linkUp" });
        act.chart?.();
        for (let i = 0; phone.work(true); i += 1) expect(i).toBeLessThan(10_000);
        const onServer = server.all().map((entry) => entry.id);
        const mine = onServer.filter((id) => id.startsWith("e"));
        expect(new Set(mine)).toEqual(new Set(phone.held()));
        expect(mine.length).toBe(new Set(mine).size);
      }),
      { numRuns: 3_000, seed: 20260419 },
    );
  });
});
