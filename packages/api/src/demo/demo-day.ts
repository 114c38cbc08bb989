import { DEMO_FORMAT, DEMO_PLAYERS, DEMO_VISITORS } from "@courtloom/demo";
import type { CoachingMode } from "@courtloom/match-log";
import type { DemoStore } from "./demo-store.ts";

/** Who plays whom, by court, in order. Court 7's first match waits for the one on court 6. */
const ORDER_OF_PLAY: readonly (readonly (readonly [string, string, CoachingMode])[])[] = [
  [
    ["Noor V.", "Elsbeth K.", "practice"],
    ["Ottoline G.", "Priya N.", "practice"],
  ],
  [
    ["Kaito L.", "Visitor red", "permitted"],
    ["Zofia W.", "Visitor slate", "permitted"],
  ],
  [
    ["Anahera P.", "Visitor amber", "notPermitted"],
    ["Nikolai Z.", "Visitor pine", "notPermitted"],
  ],
  [
    ["Tomasz B.", "Idris C.", "practice"],
    ["Halvard E.", "Ruairi S.", "practice"],
  ],
  [
    ["Leocadia P.", "Visitor chalk", "notKnown"],
    ["Freya J.", "Visitor rust", "notKnown"],
  ],
  [
    ["Yusuf A.", "Visitor slate", "notKnown"],
    ["Amaru Y.", "Caetano M.", "practice"],
  ],
  [
    ["Solveig T.", "Visitor pine", "permitted"],
    ["Bastian R.", "Jun D.", "practice"],
  ],
  [
    ["Mirembe O.", "Signe F.", "practice"],
    ["Wanjiru M.", "Thandiwe K.", "practice"],
  ],
];

const KNOWN = new Set([...DEMO_PLAYERS, ...DEMO_VISITORS].map((p) => p.displayName));

/** The day that is played on `date` (`2026-05-30`); made if it is not there. Answers its id. */
export const ensureDemoDay = async (
  store: DemoStore,
  { academyId, date }: { readonly academyId: string; readonly date: string },
): Promise<string> => {
  const days = await store.listDays({ academyId });
  const there = days.find((day) => day.date === date);
  if (there) return there.dayId;
  const players = await store.listPlayers({ academyId });
  const idOf = new Map(
    players.filter((p) => KNOWN.has(p.displayName)).map((p) => [p.displayName, p.playerId]),
  );
  const { dayId, courtIds } = await store.createDay({
    academyId,
    name: "Match play by the estuary",
    date,
    courts: ORDER_OF_PLAY.map((_, i) => ({ name: `Court ${i + 1}` })),
  });
  for (const [court, matches] of ORDER_OF_PLAY.entries()) {
    for (const [order, [a, b, coachingMode]] of matches.entries()) {
      const playerIds = { A: idOf.get(a) ?? "", B: idOf.get(b) ?? "" };
      const added = await store.addMatch({
        academyId,
        dayId,
        courtId: courtIds[court] ?? null,
        orderNo: order + 1,
        title: "Match play",
        playerIds,
        format: DEMO_FORMAT,
        firstServer: (court + order) % 2 === 0 ? "A" : "B",
        coachingMode,
      });
      if (!added.ok) throw new Error(`The demo's match ${a} against ${b} was refused: ${added.error.code}.`);
    }
  }
  return dayId;
};
