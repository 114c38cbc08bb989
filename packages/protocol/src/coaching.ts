import type { ByPlayer, Principal } from "@courtloom/core";
import type { CoachingMode } from "@courtloom/match-log";

export const LIVE_SCREENS = ["publicWall", "staffBoard", "courtPage", "phone", "pad"] as const;
/** Where something of a match shows while it is played. `phone`: the board and the court in a coach's hand. */
export type LiveScreen = (typeof LIVE_SCREENS)[number];

export const LIVE_ROLES = ["director", "coach", "helper", "wall", "player", "guardian"] as const;
/** Who looks. `helper`: with a court code. `wall`: with a wall code. Players and guardians hold nothing live. */
export type LiveRole = (typeof LIVE_ROLES)[number];

/**
 * What may arrive. `score`: scores and order of play. `scoreAndWords`: also the plan's own words, and at a change
 * of ends one agreed sentence and one question. `everything`: figures, usual rates, the plan's rules, verdicts,
 * watches and alerts too. `captioned`: the same, with the word to keep it from the player.
 */
export type Holding = "nothing" | "score" | "scoreAndWords" | "everything" | "captioned";

/** What of a match decides what may arrive. */
export interface CoachingFacts {
  /** In force now, as the desk last said it; what the log froze at its opening may be older. */
  readonly mode: CoachingMode;
  /** Both players are of this academy, which comes before any mode. */
  readonly bothOwn: boolean;
}

export interface HoldingAsked extends CoachingFacts {
  readonly screen: LiveScreen;
  readonly role: LiveRole;
}

/** `onSide`: coaching is practice or permitted. `apart`: not permitted, not known, or two own players. */
type Row = Readonly<Record<"onSide" | "apart", Holding>>;

const NOTHING: Row = { onSide: "nothing", apart: "nothing" };
const SCORE: Row = { onSide: "score", apart: "score" };
const STAFF: Row = { onSide: "everything", apart: "captioned" };
const STAFF_PAD: Row = { onSide: "scoreAndWords", apart: "score" };

const STAFF_ROWS = {
  publicWall: SCORE,
  staffBoard: STAFF,
  courtPage: STAFF,
  phone: STAFF,
  pad: STAFF_PAD,
} satisfies Record<LiveScreen, Row>;
const NO_ROWS = {
  publicWall: NOTHING,
  staffBoard: NOTHING,
  courtPage: NOTHING,
  phone: NOTHING,
  pad: NOTHING,
} satisfies Record<LiveScreen, Row>;

/** Who may see what of a match while it is played: the only place where this is said. SPEC CM1. */
const TABLE = {
  director: STAFF_ROWS,
  coach: STAFF_ROWS,
  helper: { ...NO_ROWS, pad: SCORE },
  wall: { ...NO_ROWS, publicWall: SCORE },
  player: NO_ROWS,
  guardian: NO_ROWS,
} as const satisfies Readonly<Record<LiveRole, Readonly<Record<LiveScreen, Row>>>>;

const ON_SIDE = {
  practice: true,
  permitted: true,
  notPermitted: false,
  notKnown: false,
} as const satisfies Readonly<Record<CoachingMode, boolean>>;

/** What may arrive on `screen` for `role`, as coaching stands in the match. SPEC CM1, CM2. */
export const mayHold = ({ screen, role, mode, bothOwn }: HoldingAsked): Holding =>
  TABLE[role][screen][ON_SIDE[mode] && !bothOwn ? "onSide" : "apart"];

/** Figures, usual rates, the plan's rules, verdicts, levels and watches. */
export const holdsFigures = (holding: Holding): boolean =>
  holding === "everything" || holding === "captioned";

/** The plan's own words, and the sentence and the question for a change of ends. */
export const holdsWords = (holding: Holding): boolean => holdsFigures(holding) || holding === "scoreAndWords";

/** Alerts go where figures go; between two own players to the director's staff board alone. SPEC CM3. */
export const mayHoldAlerts = (asked: HoldingAsked): boolean => {
  const { screen, role, bothOwn } = asked;
  if (bothOwn && (role !== "director" || screen !== "staffBoard")) return false;
  return holdsFigures(mayHold(asked));
};

/** A signed-in member looks as what they are in the academy; a code makes a helper or a wall of whoever holds it. */
export const liveRoleOf = (principal: Principal): LiveRole => {
  if (principal.kind === "account") return principal.role;
  return principal.kind === "courtside" ? "helper" : "wall";
};

/** As a match's card has it. */
export const coachingFactsOf = (card: {
  readonly coachingMode: CoachingMode;
  readonly players: ByPlayer<{ readonly own: boolean }>;
}): CoachingFacts => ({
  mode: card.coachingMode,
  bothOwn: card.players.A.own && card.players.B.own,
});
