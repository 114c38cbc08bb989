import type { BoardSnapshot, Tile } from "@courtloom/protocol";
import { DOWN, SOCKET_PATH, UP } from "@courtloom/protocol/names";
import type { Page, WebSocketRoute } from "@playwright/test";

const HOUR_MS = 3_600_000;
const OPEN = JSON.stringify({
  sid: "feed",
  upgrades: [],
  pingInterval: HOUR_MS,
  pingTimeout: HOUR_MS,
  maxPayload: 1e6,
});

/** A live server that a test speaks for: it answers each watch with its tiles, and sends what it is told to. */
export interface BoardFeed {
  /** Changes courts on every open page. */
  readonly send: (...tiles: readonly Tile[]) => void;
  /** What phones were heard; by match. */
  readonly tell: (event: string, message: object) => void;
}

const asked = (text: string): { readonly id: string; readonly event: string } | undefined => {
  const found = /^42(\d+)\["([^"]+)"/.exec(text);
  return found?.[1] && found[2] ? { id: found[1], event: found[2] } : undefined;
};

/**
 * Answers this page's live connection from the test, so that a day of any size moves exactly as the test says.
 * Everything else is the running product's. Call it before the page is opened.
 */
export const feedBoard = async (page: Page, first: readonly Tile[]): Promise<BoardFeed> => {
  const courts = new Map(first.map((tile) => [tile.courtId, tile]));
  const sockets = new Set<WebSocketRoute>();
  const snapshot = (): BoardSnapshot => ({
    ok: true,
    dayId: new URL(page.url()).pathname.split("/").at(-1) ?? "",
    dayName: "Saturday match play",
    academyName: "Curlew Reach",
    timeZone: "Europe/Lisbon",
    serverMs: Date.now(),
    tiles: [...courts.values()],
  });
  await page.routeWebSocket(
    (url) => url.pathname.startsWith(SOCKET_PATH),
    (socket) => {
      socket.send(`0${OPEN}`);
      socket.onMessage((text) => {
        if (text === "40") return socket.send('40{"sid":"feed"}');
        const question = asked(String(text));
        if (!question) return;
        if (question.event === UP.boardWatch) sockets.add(socket);
        const reply = question.event === UP.boardWatch ? snapshot() : { ok: true };
        socket.send(`43${question.id}${JSON.stringify([reply])}`);
      });
      socket.onClose(() => void sockets.delete(socket));
    },
  );
  const tell = (event: string, message: object) => {
    const { dayId, serverMs } = snapshot();
    for (const socket of sockets)
      socket.send(`42${JSON.stringify([event, { dayId, serverMs, ...message }])}`);
  };
  return {
    tell,
    send: (...tiles) => {
      for (const tile of tiles) {
        courts.set(tile.courtId, tile);
        tell(DOWN.boardTile, { tile });
      }
    },
  };
};
