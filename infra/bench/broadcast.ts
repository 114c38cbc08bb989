import { type ChildProcess, fork } from "node:child_process";
import { randomUUID } from "node:crypto";
import { once } from "node:events";
import type { Entry } from "@courtloom/match-log";
import {
  type BoardTile,
  type BoardWatchReply,
  DOWN,
  type LaneAppendReply,
  type LaneOpenReply,
  PROTOCOL_VERSION,
  UP,
} from "@courtloom/protocol";
import type { Socket } from "socket.io-client";
import { startProduct } from "../../e2e/fixtures/product.ts";
import { setUpAcademy } from "../../e2e/fixtures/set-up-day.ts";
import { type BigDay, makeBigDay } from "./big-day.ts";
import { type Broadcast, broadcastRun } from "./broadcast-run.ts";
import { judge, type Turn } from "./judge.ts";
import { manySockets } from "./many-sockets.ts";
import { openBrowser } from "./open-browser.ts";
import type { Bench, Outcome } from "./outcome.ts";
import { quantile } from "./quantile.ts";

const NAME = "broadcast";
const BAR = 3;
const COURTS = 64;
const VIEWERS = 300;
const REPEATS = 5;
const RUNS = 3;

/** A point to and fro, so that no game ends. */
const pointOf = (n: number): Entry => ({
  ...{ v: 1, id: randomUUID(), n, atMs: n * 1_000, wallMs: Date.now() },
  body: {
    kind: "PointCharted",
    point: {
      ...{ winner: n % 2 === 0 ? "A" : "B", level: "every", seat: "behind", endOfA: "near" },
      serve: { outcome: "firstIn", faults: 0 },
      shots: [
        {
          ...{ striker: "A", kind: "groundstroke" },
          ...{ from: { right: 300, away: -1_100 }, to: { right: 300, away: 1_000 } },
        },
      ],
    },
  },
});

interface Lane {
  readonly laneId: string;
  readonly incarnation: string;
  n: number;
}

const openLane = async (phone: Socket, matchId: string): Promise<Lane> => {
  const laneId = randomUUID();
  const wish = { v: PROTOCOL_VERSION, matchId, laneId, level: "every" };
  const reply = (await phone.emitWithAck(UP.laneOpen, wish)) as LaneOpenReply;
  if (!reply.ok) throw new Error(`A lane was refused: ${reply.code}.`);
  return { laneId, incarnation: reply.incarnation, n: 0 };
};

const closing = (phones: readonly Socket[], viewers: readonly Socket[]) => (): void => {
  for (const socket of [...phones, ...viewers]) socket.close();
};

/** The product: a phone's point is committed, and every board is sent the court's tile. */
const openBoards = async (url: string, cookie: string, { dayId, matchIds }: BigDay): Promise<Broadcast> => {
  const phones = await manySockets(url, cookie, COURTS);
  const viewers = await manySockets(url, cookie, VIEWERS);
  const lanes: Lane[] = [];
  for (const [i, phone] of phones.entries()) lanes.push(await openLane(phone, matchIds[i] ?? ""));
  for (const viewer of viewers) {
    const watch = { v: PROTOCOL_VERSION, dayId, view: "staff" };
    const reply = (await viewer.emitWithAck(UP.boardWatch, watch)) as BoardWatchReply;
    if (!reply.ok) throw new Error(`A board was refused: ${reply.code}.`);
  }
  return {
    viewers: VIEWERS,
    close: closing(phones, viewers),
    commit: async (court) => {
      const [phone, lane, matchId = ""] = [phones[court], lanes[court], matchIds[court]];
      if (!phone || !lane) throw new Error(`There is no court ${court}.`);
      lane.n += 1;
      const { laneId, incarnation } = lane;
      const batch = { v: PROTOCOL_VERSION, matchId, laneId, incarnation, entries: [pointOf(lane.n)] };
      const reply = (await phone.emitWithAck(UP.laneAppend, batch)) as LaneAppendReply;
      if (!reply.ok || reply.rejected.length > 0) throw new Error("A point was not taken.");
      return `${matchId} ${reply.head}`;
    },
    onTold: (told) => {
      for (const viewer of viewers) {
        viewer.off(DOWN.boardTile);
        viewer.on(DOWN.boardTile, ({ tile }: BoardTile) => told(`${tile.matchId} ${tile.pos}`));
      }
    },
  };
};

/** The floor: a bare server tells everybody what came with a point, as long as a tile. */
const openFloor = async (url: string, bytes: number): Promise<Broadcast> => {
  const phones = await manySockets(url, "", COURTS);
  const viewers = await manySockets(url, "", VIEWERS);
  let sent = 0;
  return {
    viewers: VIEWERS,
    close: closing(phones, viewers),
    commit: async (court) => {
      sent += 1;
      const what = String(sent);
      await phones[court]?.emitWithAck("point", { what, filling: "x".repeat(bytes) });
      return what;
    },
    onTold: (told) => {
      for (const viewer of viewers) {
        viewer.off("told");
        viewer.on("told", ({ what }: { readonly what: string }) => told(what));
      }
    },
  };
};

const tileBytes = async (url: string, cookie: string, dayId: string): Promise<number> => {
  const [viewer] = await manySockets(url, cookie, 1);
  const watch = { v: PROTOCOL_VERSION, dayId, view: "staff" };
  const reply = (await viewer?.emitWithAck(UP.boardWatch, watch)) as BoardWatchReply;
  viewer?.close();
  if (!reply.ok) throw new Error(`A board was refused: ${reply.code}.`);
  return JSON.stringify(reply.tiles[0]).length;
};

const startFloor = async (): Promise<{ readonly child: ChildProcess; readonly url: string }> => {
  const child = fork(new URL("bare-broadcast.ts", import.meta.url));
  const [port] = (await once(child, "message")) as [number];
  return { child, url: `http://127.0.0.1:${port}` };
};

const say = (turns: readonly Turn[]): Outcome => {
  const { ratio, spread, verdict } = judge(turns, BAR);
  const listed = (part: keyof Turn): string => turns.map((turn) => turn[part].toFixed(1)).join(", ");
  console.log(`  p95, ms in ${turns.length} turns: boards ${listed("ours")}`);
  console.log(`    bare broadcast ${listed("floor")}, spread ${spread.toFixed(2)}`);
  console.log(`    ratio ${ratio.toFixed(2)} (bar ${BAR}) ${verdict.toUpperCase()}`);
  return { name: NAME, verdict };
};

const measure = async (boards: Broadcast, floor: Broadcast): Promise<Outcome> => {
  let outcome: Outcome = { name: NAME, verdict: "noisy" };
  for (let run = 1; run <= RUNS && outcome.verdict === "noisy"; run += 1) {
    const turns: Turn[] = [];
    for (let i = 0; i < REPEATS; i += 1) {
      const floorMs = quantile(await broadcastRun(floor, COURTS), 0.95);
      turns.push({ floor: floorMs, ours: quantile(await broadcastRun(boards, COURTS), 0.95) });
    }
    outcome = say(turns);
  }
  return outcome;
};

const setUp = async (url: string): Promise<{ readonly day: BigDay; readonly cookie: string }> => {
  const browser = await openBrowser();
  try {
    const desk = await browser.newContext();
    const director = await desk.newPage();
    await setUpAcademy(director, url);
    const day = await makeBigDay(director, COURTS);
    const cookie = (await desk.cookies()).map(({ name, value }) => `${name}=${value}`).join("; ");
    return { day, cookie };
  } finally {
    await browser.close();
  }
};

/** From sending a point to every board, 64 courts and 300 viewers, against a bare broadcast. Spec BN11. */
export const benchBroadcast: Bench = async () => {
  const product = await startProduct("bench-broadcast");
  const floor = await startFloor();
  try {
    const { day, cookie } = await setUp(product.url);
    console.log(
      `broadcast: from sending a point, its commit included, to every board, ${COURTS} courts, ${VIEWERS} viewers`,
    );
    const boards = await openBoards(product.url, cookie, day);
    const bytes = await tileBytes(product.url, cookie, day.dayId);
    const bare = await openFloor(floor.url, bytes);
    try {
      return [await measure(boards, bare)];
    } finally {
      boards.close();
      bare.close();
    }
  } finally {
    floor.child.disconnect();
    await product.stop();
  }
};
