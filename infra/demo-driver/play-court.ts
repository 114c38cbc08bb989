import type { Clock } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";
import { createPhone, type Phone } from "./phone.ts";
import { type Happening, laneIdOf, type ScriptedMatch, type Step, scriptOf } from "./script.ts";

export interface CourtPlay {
  readonly url: string;
  readonly cookie: string;
  readonly match: ScriptedMatch;
  readonly happenings: readonly Happening[];
  /** Share of the match that is charted at once when nothing of it is yet, in [0, 1). */
  readonly begun: number;
  /** How many times faster than real play. */
  readonly speed: number;
  readonly clock: Clock;
  readonly isStopped: () => boolean;
  readonly say: (line: string) => void;
}

const BATCH = 25;

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

const entryOf = (step: Step, n: number, startedMs: number, clock: Clock): Entry => ({
  v: 1,
  id: step.id,
  n,
  atMs: Math.max(0, Math.round(clock.monotonicMs() - startedMs)),
  wallMs: clock.wallMs(),
  body: step.body,
});

/** Sends entries in batches; false when the server refused for good. */
const sendAll = async (phone: Phone, entries: readonly Entry[], say: CourtPlay["say"]): Promise<boolean> => {
  for (let i = 0; i < entries.length; i += BATCH) {
    const refused = await phone.send(entries.slice(i, i + BATCH));
    if (!refused) continue;
    say(`refused: ${refused.refused}`);
    return false;
  }
  return true;
};

/** Plays the rest of a match, step by step, from the server's cursor. */
const playOn = async (
  play: CourtPlay,
  phone: Phone,
  steps: readonly Step[],
  cursor: number,
): Promise<void> => {
  const { clock, say, speed, happenings } = play;
  const startedMs = clock.monotonicMs();
  const make = (i: number): Entry[] => {
    const step = steps[i];
    return step ? [entryOf(step, i + 1, startedMs, clock)] : [];
  };
  const begun = Math.floor(steps.length * play.begun);
  const first = steps.slice(cursor, begun).flatMap((_, k) => make(cursor + k));
  if (!(await sendAll(phone, first, say))) return;
  const silence = happenings.find((h) => h.type === "silent");
  let unsent: Entry[] = [];
  let speaksAtMs = Number.POSITIVE_INFINITY;
  for (let i = Math.max(cursor, begun); i < steps.length && !play.isStopped(); i += 1) {
    await wait((steps[i]?.waitMs ?? 0) / speed);
    unsent.push(...make(i));
    if (silence && i === silence.at) {
      phone.setSilent(true);
      speaksAtMs = clock.monotonicMs() + silence.ms;
    }
    const isSilent = speaksAtMs !== Number.POSITIVE_INFINITY && clock.monotonicMs() < speaksAtMs;
    if (isSilent) continue;
    phone.setSilent(false);
    if (!(await sendAll(phone, unsent, say))) return;
    unsent = [];
  }
  await sendAll(phone, unsent, say);
};

/** Charts one match from where the server stands to its end, through the same door as a person's phone. */
export const playCourt = async (play: CourtPlay): Promise<void> => {
  const { url, cookie, match, clock, say } = play;
  const phone = createPhone({ url, cookie, matchId: match.matchId, laneId: laneIdOf(match.matchId), clock });
  try {
    const opened = await phone.open();
    if ("refused" in opened) {
      say(`not opened: ${opened.refused}`);
      return;
    }
    await playOn(play, phone, scriptOf(match, play.happenings), opened.cursor);
  } finally {
    phone.close();
  }
};
