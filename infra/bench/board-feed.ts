import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { type BoardSnapshot, DOWN, SOCKET_PATH, type Tile, UP } from "@courtloom/protocol";
import { Server } from "socket.io";
import { boardTile } from "../../e2e/board/board-tiles.ts";

/** As many courts as a day may have. */
export const COURTS = 64;
/** Updates a second of each court: as many as the live server sends at most. */
export const UPDATES_PER_SECOND = 4;

const FLOOR = readFileSync(new URL("in-page/board-floor.html", import.meta.url), "utf8");
const CALLED = ["0", "15", "30", "40"];

/** A court's next tile: its score, counts and figures move as with each point. */
const moved = (tile: Tile): Tile => {
  const pos = tile.pos + 1;
  const figures = tile.staff?.figures.A;
  if (!tile.staff || !tile.score || !figures) return { ...tile, pos };
  const points = { A: CALLED[pos % 4] ?? "0", B: CALLED[(pos >> 1) % 4] ?? "0" };
  const lineMissed = { ...figures.lineMissed, x: pos % 9, n: 9 + (pos % 40) };
  const progress = { ...tile.staff.progress, points: pos };
  return {
    ...tile,
    pos,
    score: { ...tile.score, points },
    staff: { ...tile.staff, progress, figures: { ...tile.staff.figures, A: { ...figures, lineMissed } } },
  };
};

export interface BoardFeedServer {
  readonly port: number;
  /** Moves every court at its pace for so long. */
  readonly play: (ms: number) => Promise<void>;
  readonly stop: () => Promise<void>;
}

/**
 * Stands where the live server stands, with its messages, at a pace that is the same in each run; under `/` it
 * serves the floor. Waiting courts move too: all 64 do.
 */
export const serveBoardFeed = async (): Promise<BoardFeedServer> => {
  const nowMs = Date.now();
  let tiles = Array.from({ length: COURTS }, (_, i): Tile => {
    const tile = boardTile(i, nowMs);
    return { ...tile, state: "playing", score: boardTile(0, nowMs).score };
  });
  const web = createServer((_, response) => {
    response.setHeader("content-type", "text/html");
    response.end(FLOOR);
  });
  const sockets = new Server(web, { path: SOCKET_PATH, addTrailingSlash: false, transports: ["websocket"] });
  let dayId = "";
  const snapshot = (): BoardSnapshot => ({
    ...{ ok: true, dayId, dayName: "Bench day", academyName: "Curlew Reach", timeZone: "Europe/Lisbon" },
    ...{ serverMs: Date.now(), tiles },
  });
  sockets.on("connection", (socket) => {
    socket.on(
      UP.boardWatch,
      (message: { readonly dayId: string }, answer: (reply: BoardSnapshot) => void) => {
        dayId = message.dayId;
        answer(snapshot());
      },
    );
  });
  const move = (court: number): void => {
    const tile = tiles[court];
    if (!tile) return;
    const serverMs = Date.now();
    const next = moved({ ...tile, heard: tile.heard && { ...tile.heard, heardMs: serverMs } });
    tiles = tiles.with(court, next);
    sockets.emit(DOWN.boardTile, { dayId, serverMs, tile: next });
  };
  await new Promise<void>((resolve) => web.listen(0, "127.0.0.1", resolve));
  return {
    port: (web.address() as AddressInfo).port,
    play: async (ms) => {
      const begin = performance.now();
      const rate = (COURTS * UPDATES_PER_SECOND) / 1000;
      for (let sent = 0; ; ) {
        const passed = performance.now() - begin;
        if (passed >= ms) return;
        for (const due = Math.floor(passed * rate); sent < due; sent += 1) move(sent % COURTS);
        await new Promise((resolve) => setTimeout(resolve, 4));
      }
    },
    stop: async () => {
      await sockets.close();
      web.closeAllConnections();
    },
  };
};
