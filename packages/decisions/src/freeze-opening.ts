import { type ByPlayer, byPlayer, SIDES, type Side } from "@courtloom/core";
import {
  ASKS,
  type CoachingMode,
  type FrozenPlan,
  type MatchOpened,
  type OpenedPlayer,
  RATES,
  type Rate,
  type ShotAsks,
  type UsualRate,
} from "@courtloom/match-log";
import type { MatchFormat } from "@courtloom/tennis";
import { asksOfPlan } from "./plan/asks-of-plan.ts";
import { STARTER_ASKS } from "./starter-asks.ts";
import type { Tally } from "./tally/tally.ts";
import { usualRate } from "./usual-rate.ts";
import { freezeWatch } from "./watches/freeze-watch.ts";
import { watchDesigns } from "./watches/watch-designs.ts";
import type { WatchedPlayers } from "./watches/watch-settings.ts";

/** Past tallies: each player's own, and all of the academy's. */
export interface PastTallies {
  readonly own: ByPlayer<readonly Tally[]>;
  readonly academy: readonly Tally[];
}

export interface OpeningInput {
  readonly matchId: string;
  readonly format: MatchFormat;
  readonly firstServer: Side;
  readonly players: ByPlayer<OpenedPlayer>;
  readonly doubles: boolean;
  readonly doublesOrder?: readonly [string, string, string, string];
  readonly coachingMode: CoachingMode;
  readonly past: PastTallies;
  /** Each charted player's plan as it holds today; absent, or null for a side: no choice of that side is judged. */
  readonly plans?: ByPlayer<FrozenPlan | null>;
  /** What is watched of each own player; absent, or null for a side: nothing. */
  readonly watches?: WatchedPlayers;
  /** Name of the academy's newest fit; absent or null: there is none yet. SPEC HF12. */
  readonly fitVersion?: string | null;
  /** Somebody wants to know whether a player hesitated. */
  readonly wantsHesitation?: boolean;
}

const usualRates = (past: PastTallies, side: Side): Partial<Record<Rate, UsualRate>> => {
  const rates: Partial<Record<Rate, UsualRate>> = {};
  for (const rate of RATES) {
    const usual = usualRate(rate, past.own[side], past.academy);
    if (usual) rates[rate] = usual;
  }
  return rates;
};

/** Both own players are charted when both play; doubles are charted for the score only. */
const subjectsOf = (input: OpeningInput): Side[] => {
  if (input.doubles) return [];
  return SIDES.filter((side) => input.players[side].own);
};

/** Only own players' choices are judged. */
const plansOf = ({ plans, players }: OpeningInput): ByPlayer<FrozenPlan | null> =>
  byPlayer((side) => (players[side].own ? (plans?.[side] ?? null) : null));

/** What either plan needs; without one what the figures of line balls and short balls stand on. SPEC D11, D20. */
const asksOf = (plans: readonly FrozenPlan[], hesitated: boolean): ShotAsks => {
  if (plans.length === 0) {
    const also = hesitated ? (["hesitated"] as const) : [];
    return { line: [...STARTER_ASKS.line, ...also], short: [...STARTER_ASKS.short, ...also] };
  }
  const each = plans.map(({ rules }) => asksOfPlan(rules, { hesitated }));
  const inOrder = [...STARTER_ASKS.line, ...ASKS.filter((ask) => !STARTER_ASKS.line.includes(ask))];
  const either = (of: keyof ShotAsks) => inOrder.filter((ask) => each.some((asks) => asks[of].includes(ask)));
  return { line: either("line"), short: either("short") };
};

/** Names what was agreed, side A's plan first: "plan@version"; null where nobody has one. SPEC D41. */
const planVersionOf = (plans: readonly FrozenPlan[]): string | null =>
  plans.length === 0
    ? null
    : [...new Set(plans.map(({ planId, version }) => `${planId}@${version}`))].join(" ");

const unwatchedOpening = (input: OpeningInput): MatchOpened => {
  const plans = plansOf(input);
  const held = SIDES.flatMap((side) => plans[side] ?? []);
  return {
    kind: "MatchOpened",
    matchId: input.matchId,
    format: input.format,
    firstServer: input.firstServer,
    players: input.players,
    subjects: subjectsOf(input),
    doubles: input.doubles,
    ...(input.doublesOrder ? { doublesOrder: input.doublesOrder } : {}),
    coachingMode: input.coachingMode,
    usualRates: byPlayer((side) => (input.players[side].own ? usualRates(input.past, side) : {})),
    planVersion: planVersionOf(held),
    fitVersion: input.fitVersion ?? null,
    watches: [],
    ...(input.plans ? { plans } : {}),
    asks: asksOf(held, input.wantsHesitation ?? false),
  };
};

/**
 * The first entry's body: everything that the fold needs, as it stands when the match opens. With `watches` it takes
 * tenths of a second for each. SPEC L2, WA11.
 */
export const freezeOpening = (input: OpeningInput): MatchOpened => {
  const opened = unwatchedOpening(input);
  if (!input.watches) return opened;
  return { ...opened, watches: watchDesigns(opened, input.watches, input.past.own).map(freezeWatch) };
};
