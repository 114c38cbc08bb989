import type { ByPlayer } from "@courtloom/core";
import type { ChartingLevel, Rate } from "@courtloom/match-log";
import type { Heard, Tile, TileAlert, TileScore, TileState } from "@courtloom/protocol";
import type { MarkName } from "../loom/mark.tsx";
import { type Freshness, silenceWords } from "./freshness.ts";
import { endWords } from "./score-lines.ts";

/** A state in shape and words, beside the court's number. */
export interface Flag {
  readonly mark: MarkName;
  readonly word: string;
  readonly detail: string | null;
}

const ALERT_FLAGS = {
  standing: ["alert", "Alert"],
  easing: ["easing", "Easing"],
  noticed: ["noticed", "Noticed"],
  withdrawn: ["withdrawn", "Withdrawn"],
} as const satisfies Record<TileAlert["state"], readonly [MarkName, string]>;

/** The state of a court's gravest alert; undefined without one, and where nothing is played. */
export const alertState = ({
  state,
  staff,
}: Pick<Tile, "state" | "staff">): TileAlert["state"] | undefined =>
  state === "playing" || state === "suspended" ? staff?.alerts?.[0]?.state : undefined;

const ALERT_ABOUT = {
  lineMissed: null,
  lineShare: "share down the line",
  keptMissed: "kept balls missed",
  lineOffPlan: "line balls off plan",
  passedUp: "moments passed up",
} as const satisfies Readonly<Record<Rate, string | null>>;

/** What stands on a court, beyond what its tile says: of which rate, and whether all of it is snoozed. */
export interface Standing {
  readonly rate: Rate;
  readonly snoozed: boolean;
}

const standingDetail = ({ rate, snoozed }: Standing, since: string | null): string | null => {
  if (snoozed) return "snoozed";
  const parts = [ALERT_ABOUT[rate], since].filter((part) => part !== null);
  return parts.length === 0 ? null : parts.join(", ");
};

/**
 * The flag of a court's gravest alert: "Alert, since 2–1"; of another rate than line balls missed, which stand below,
 * it says which. Null without one. SPEC rules BD42, AS21.
 */
export const alertFlagOf = (tile: Pick<Tile, "state" | "staff">, standing?: Standing): Flag | null => {
  const state = alertState(tile);
  if (state === undefined) return null;
  const [mark, word] = ALERT_FLAGS[state];
  const games = tile.staff?.alerts?.[0]?.since;
  const since = games == null ? null : `${state === "easing" ? "raised at" : "since"} ${games}`;
  const detail = state === "standing" && standing ? standingDetail(standing, since) : since;
  return { mark, word, detail };
};

export interface FlaggedCourt {
  readonly state: TileState;
  readonly next: string | null;
  readonly names: ByPlayer<string> | null;
  readonly score: TileScore | null;
}

/** The flag of a court; null for one that is in play and heard. SPEC rule BD4. */
export const flagOf = (court: FlaggedCourt, freshness: Freshness): Flag | null => {
  if (freshness.kind === "blind") {
    const silent =
      freshness.seconds === null ? "phone not heard" : `phone silent ${silenceWords(freshness.seconds)}`;
    return { mark: "blind", word: "Blind", detail: silent };
  }
  switch (court.state) {
    case "waiting":
      return { mark: "waiting", word: "Waiting", detail: court.next && `then ${court.next}` };
    case "suspended":
      return { mark: "suspended", word: "Suspended", detail: null };
    case "over": {
      const end = court.names && court.score ? endWords(court.names, court.score) : null;
      return { mark: "over", word: "Over", detail: end };
    }
    case "empty":
    case "playing":
      return null;
  }
};

export const LEVEL_WORDS = {
  score: "score only",
  key: "key balls",
  every: "every ball",
} satisfies Record<ChartingLevel, string>;

/** "Ioan P., key balls"; "Nobody charts yet" without a chartist. */
export const chartistWords = (chartist: string | null, level: ChartingLevel): string =>
  chartist === null ? "Nobody charts yet" : `${chartist}, ${LEVEL_WORDS[level]}`;

/** "also Maren H. (second)"; null when nobody charts beside the lead. */
export const secondsWords = (seconds: readonly string[] | undefined): string | null =>
  seconds && seconds.length > 0 ? `also ${seconds.join(", ")} (second)` : null;

/** "3 unsent when last heard"; null when there were none or nothing is known. */
export const unsentWords = (heard: Heard | null): string | null =>
  heard?.unsent ? `${heard.unsent} unsent when last heard` : null;

/** What stands in for figures on a blind court. `heardAt`: wall time in the academy's zone, null when never. */
export const blindSentence = (heardAt: string | null, chartist: string | null): string => {
  const score = heardAt === null ? "Score as last known." : `Score as heard at ${heardAt}.`;
  return chartist === null ? score : `${score} Ask ${chartist} on court.`;
};
