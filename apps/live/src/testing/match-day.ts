import { byPlayer } from "@courtloom/core";
import type { CoachingMode, MatchOpened, MatchView } from "@courtloom/match-log";
import { THREE_SETS } from "@courtloom/match-log/testing";
import type { DayBoard, DayStore, LogStore, MatchCard, MatchRef } from "../store.ts";

/** Where a match of the invented day is played. */
export interface Fixture extends MatchRef {
  readonly dayId: string;
  readonly courtId: string;
  readonly courtNo: number;
  readonly names: readonly [string, string];
}

/** Two academies; the second has nothing to do with the first. */
export const MATCHES: readonly Fixture[] = [
  {
    academyId: "curlew",
    matchId: "m1",
    dayId: "d1",
    courtId: "c1",
    courtNo: 1,
    names: ["Noor V.", "Kaito L."],
  },
  {
    academyId: "curlew",
    matchId: "m2",
    dayId: "d1",
    courtId: "c2",
    courtNo: 2,
    names: ["Idris C.", "Jun D."],
  },
  {
    academyId: "curlew",
    matchId: "m3",
    dayId: "d1",
    courtId: "c1",
    courtNo: 1,
    names: ["Signe F.", "Zofia W."],
  },
  {
    academyId: "curlew",
    matchId: "m4",
    dayId: "d2",
    courtId: "c1",
    courtNo: 1,
    names: ["Priya N.", "Amaru Y."],
  },
  {
    academyId: "sandbar",
    matchId: "m9",
    dayId: "d9",
    courtId: "c9",
    courtNo: 1,
    names: ["Lia O.", "Per S."],
  },
];

export interface MatchDay extends DayStore {
  /** What the rooms said came of a match, in order. */
  readonly settled: readonly { readonly matchId: string; readonly over: boolean }[];
  /** While true every question rejects. */
  away: boolean;
  /** What the desk says of every match now. */
  coaching: { readonly mode: CoachingMode; readonly bothOwn: boolean };
  /** What openings have beside or instead of the usual. */
  opening: Partial<MatchOpened>;
}

const rate = { mean: 0.3, low: 0.1, high: 0.55, a: 6, b: 14, source: "own" } as const;

const cardOf = (
  fixture: Fixture,
  stage: MatchCard["stage"],
  { mode, bothOwn }: MatchDay["coaching"],
): MatchCard => ({
  academyId: fixture.academyId,
  matchId: fixture.matchId,
  dayId: fixture.dayId,
  courtId: fixture.courtId,
  courtNo: fixture.courtNo,
  players: byPlayer((side) => ({
    playerId: `${fixture.matchId}-${side}`,
    displayName: fixture.names[side === "A" ? 0 : 1],
    hand: "right",
    own: side === "A" || bothOwn,
    level: null,
  })),
  partners: { A: null, B: null },
  format: THREE_SETS,
  firstServer: "A",
  doubles: false,
  coachingMode: mode,
  stage,
});

/** The day's tables of the invented academies, over a match log. */
export const createMatchDay = (store: Pick<LogStore, "head">): MatchDay => {
  const settled: { matchId: string; over: boolean }[] = [];
  const over = new Map<string, boolean>();
  const keyOf = ({ academyId, matchId }: MatchRef): string => `${academyId}/${matchId}`;
  const ask = (): void => {
    if (day.away) throw new Error("the database is away");
  };
  const stageOf = async (fixture: Fixture): Promise<MatchCard["stage"]> => {
    const { academyId, matchId } = fixture;
    const head = await store.head({ academyId, matchId });
    if (!head.ok || head.value.pos === 0) return "waiting";
    if (head.value.sealed) return "sealed";
    return over.get(keyOf(fixture)) ? "over" : "open";
  };
  const boardOf = async (academyId: string, dayId: string): Promise<DayBoard | undefined> => {
    const mine = MATCHES.filter((m) => m.academyId === academyId && m.dayId === dayId);
    if (mine.length === 0) return undefined;
    const cards = await Promise.all(
      mine.map(async (m) => ({ no: m.courtNo, card: cardOf(m, await stageOf(m), day.coaching) })),
    );
    const courts = [...new Set(mine.map((m) => m.courtNo))].map((no) => {
      const here = cards.filter((c) => c.no === no).map((c) => c.card);
      const waiting = here.filter((c) => c.stage === "waiting");
      const current = here.findLast((c) => c.stage === "open") ?? waiting[0] ?? here.at(-1) ?? null;
      return {
        courtId: `c${no}`,
        no,
        name: `Court ${no}`,
        current,
        next: waiting.filter((c) => c !== current),
      };
    });
    return {
      day: { dayId, name: "Tide Cup" },
      academyName: "Curlew Reach",
      timeZone: "Europe/Lisbon",
      courts,
    };
  };
  const day: MatchDay = {
    settled,
    away: false,
    coaching: { mode: "practice", bothOwn: false },
    opening: {},
    matchCard: async (match) => {
      ask();
      const fixture = MATCHES.find((m) => keyOf(m) === keyOf(match));
      return fixture && cardOf(fixture, await stageOf(fixture), day.coaching);
    },
    dayBoard: async ({ academyId, dayId }) => {
      ask();
      return boardOf(academyId, dayId);
    },
    openingOf: async (card) => {
      ask();
      return {
        kind: "MatchOpened",
        matchId: card.matchId,
        format: card.format,
        firstServer: "A",
        players: byPlayer((side) => {
          const { playerId, hand, own } = card.players[side];
          return { playerId, hand, own };
        }),
        subjects: ["A"],
        doubles: false,
        coachingMode: card.coachingMode,
        usualRates: { A: { lineMissed: rate }, B: {} },
        planVersion: "plan-1",
        fitVersion: "fit-1",
        watches: [],
        ...day.opening,
      };
    },
    settle: async (match, view: MatchView) => {
      ask();
      const isOver = view.score.over || view.sealed;
      over.set(keyOf(match), isOver);
      settled.push({ matchId: match.matchId, over: isOver });
    },
  };
  return day;
};
