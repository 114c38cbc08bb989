import type {
  AlertKey,
  AlertLine,
  AlertMark,
  AlertsSnapshot,
  BoardSnapshot,
  Tile,
} from "@courtloom/protocol";
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

/** A live server that a test speaks for: it answers each watch with its tiles and alerts, and sends what it is told to. */
export interface BoardFeed {
  /** Changes courts on every open page. */
  readonly send: (...tiles: readonly Tile[]) => void;
  /** What phones were heard; by match. */
  readonly tell: (event: string, message: object) => void;
  /** Changes the list of alerts. */
  readonly list: (...alerts: readonly AlertLine[]) => void;
  readonly notify: (...notices: readonly AlertKey[]) => void;
  /** What was said of alerts, in order. */
  readonly marks: readonly AlertMark[];
  /** How marks, and watches of alerts, are answered from now on. */
  readonly answer: (answers: FeedAnswers) => void;
  /** Cuts every connection; while away, the server takes no new one. */
  readonly away: (isAway: boolean) => Promise<void>;
}

export interface FeedAnswers {
  readonly mark?: object;
  readonly alerts?: object;
}

interface Question {
  readonly id: string;
  readonly event: string;
  readonly message: unknown;
}

const asked = (text: string): Question | undefined => {
  const found = /^42(\d+)(\[.*\])$/s.exec(text);
  if (!found?.[1] || !found[2]) return undefined;
  const [event, message] = JSON.parse(found[2]) as [string, unknown];
  return { id: found[1], event, message };
};

const MEMBERS = [
  { memberId: "member-maren", name: "Maren H." },
  { memberId: "member-dana", name: "Dana H." },
];

/**
 * Answers this page's live connection from the test, so that a day of any size moves exactly as the test says.
 * Everything else is the running product's. Call it before the page is opened.
 */
export const feedBoard = async (
  page: Page,
  first: readonly Tile[],
  firstAlerts: readonly AlertLine[] = [],
): Promise<BoardFeed> => {
  const courts = new Map(first.map((tile) => [tile.courtId, tile]));
  const sockets = new Set<WebSocketRoute>();
  const marks: AlertMark[] = [];
  let alerts = firstAlerts;
  let answers: FeedAnswers = {};
  let isAway = false;
  const dayId = () => new URL(page.url()).pathname.split("/").at(-1) ?? "";
  const snapshot = (): BoardSnapshot => ({
    ok: true,
    dayId: dayId(),
    dayName: "Saturday match play",
    academyName: "Curlew Reach",
    timeZone: "Europe/Lisbon",
    serverMs: Date.now(),
    tiles: [...courts.values()],
  });
  const alertsNow = (): AlertsSnapshot => ({
    ok: true,
    dayId: dayId(),
    serverMs: Date.now(),
    alerts,
    notices: [],
    members: MEMBERS,
  });
  const replyTo = ({ event, message }: Question): object => {
    if (event === UP.boardWatch) return snapshot();
    if (event === UP.alertsWatch) return answers.alerts ?? alertsNow();
    if (event !== UP.alertMark) return { ok: true };
    marks.push(message as AlertMark);
    return answers.mark ?? { ok: true };
  };
  await page.routeWebSocket(
    (url) => url.pathname.startsWith(SOCKET_PATH),
    async (socket) => {
      if (isAway) return socket.close();
      socket.send(`0${OPEN}`);
      socket.onMessage((text) => {
        if (text === "40") return socket.send('40{"sid":"feed"}');
        const question = asked(String(text));
        if (!question) return;
        if (question.event === UP.boardWatch) sockets.add(socket);
        socket.send(`43${question.id}${JSON.stringify([replyTo(question)])}`);
      });
      socket.onClose(() => void sockets.delete(socket));
    },
  );
  const tell = (event: string, message: object) => {
    const stamp = { dayId: dayId(), serverMs: Date.now() };
    for (const socket of sockets) socket.send(`42${JSON.stringify([event, { ...stamp, ...message }])}`);
  };
  return {
    tell,
    marks,
    send: (...tiles) => {
      for (const tile of tiles) {
        courts.set(tile.courtId, tile);
        tell(DOWN.boardTile, { tile });
      }
    },
    list: (...now) => {
      alerts = now;
      tell(DOWN.alerts, { alerts });
    },
    notify: (...notices) => tell(DOWN.alertNotices, { notices }),
    answer: (now) => {
      answers = now;
    },
    away: async (now) => {
      isAway = now;
      if (now) for (const socket of [...sockets]) await socket.close();
    },
  };
};
