import {
  ACADEMY_ATTEMPTS,
  type AcademyRate,
  academyRate,
  readTally,
  type Tally,
  tallyCount,
  usualRateFrom,
} from "@courtloom/decisions";
import { RATES, type Rate, type UsualRate } from "@courtloom/match-log";
import { noInput } from "../fields.ts";
import { staffProcedure } from "../procedure.ts";
import type { WatchSettingRow } from "./watch-store.ts";

/** What a match that is opened now would take as usual. */
export interface UsualNow extends Pick<UsualRate, "mean" | "low" | "high" | "source"> {
  /** The player's own attempts that it stands on. */
  readonly n: number;
}

export interface WatchedPlayer {
  readonly playerId: string;
  readonly displayName: string;
  /** Null while the academy's settings hold. */
  readonly setting: WatchSettingRow | null;
  /** Null for a rate that the academy has charted too little of. */
  readonly usual: Readonly<Record<Rate, UsualNow | null>>;
}

export interface WatchFile {
  /** Null until somebody chose: the default holds. */
  readonly academy: WatchSettingRow | null;
  /** Attempts that the academy has charted of each rate, and how many it takes to watch one. */
  readonly charted: Readonly<Record<Rate, number>>;
  readonly needed: number;
  /** Alerts of each rate that staff called useful, of those that they called useful or not. */
  readonly judged: Readonly<Record<Rate, { readonly x: number; readonly n: number }>>;
  /** The academy's own, by name. */
  readonly players: readonly WatchedPlayer[];
}

const byRate = <T>(of: (rate: Rate) => T): Record<Rate, T> =>
  Object.fromEntries(RATES.map((rate) => [rate, of(rate)])) as Record<Rate, T>;

const usualNow = (rate: Rate, own: readonly Tally[], academys: AcademyRate): UsualNow | null => {
  const usual = usualRateFrom(rate, own, academys);
  if (!usual) return null;
  const { mean, low, high, source } = usual;
  return { mean, low, high, source, n: own.reduce((n, tally) => n + tallyCount(tally, rate).n, 0) };
};

/** What is watched of everybody and of each player, and what is usual for whom now. Rule WA21. */
export const getWatch = staffProcedure.input(noInput).query(async ({ ctx }): Promise<WatchFile> => {
  const { academyId } = ctx.staff;
  const [settings, players, rows, judged] = await Promise.all([
    ctx.store.watchSettings({ academyId }),
    ctx.store.listPlayers({ academyId, ownOnly: true }),
    ctx.store.academyTallies({ academyId }),
    ctx.store.judgedAlerts({ academyId }),
  ]);
  const tallies = new Map<string, Tally[]>();
  for (const { playerId, tally } of rows) {
    const read = readTally(tally);
    if (!read.ok) continue;
    const own = tallies.get(playerId) ?? [];
    own.push(read.value);
    tallies.set(playerId, own);
  }
  const all = [...tallies.values()].flat();
  const academys = byRate((rate) => academyRate(rate, all));
  const settingOf = (playerId: string | null) =>
    settings.find((setting) => setting.playerId === playerId) ?? null;
  return {
    academy: settingOf(null),
    charted: byRate((rate) => academys[rate].n),
    needed: ACADEMY_ATTEMPTS,
    judged: byRate((rate) => {
      const { x = 0, n = 0 } = judged.find((one) => one.rate === rate) ?? {};
      return { x, n };
    }),
    players: players.map(({ playerId, displayName }) => ({
      playerId,
      displayName,
      setting: settingOf(playerId),
      usual: byRate((rate) => usualNow(rate, tallies.get(playerId) ?? [], academys[rate])),
    })),
  };
});
