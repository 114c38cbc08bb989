import { type ApiStore, codesEndMs } from "@courtloom/api";
import type { Auth, HandOverRefusal } from "@courtloom/auth";
import { type AccountPrincipal, type CourtsidePrincipal, err, ok, type Result } from "@courtloom/core";
import type {
  HandOverAsk,
  HandOverCode,
  HandOverLane,
  HandOverRefusalCode,
} from "../../pad/hand-over/hand-over-wire.ts";
import type { CourtsideSource } from "../list-matches.ts";
import { whoSpeaks } from "../who-speaks.ts";

export interface HandOverMeans {
  readonly auth: Pick<Auth, "principalOf" | "makeHandOver" | "withdrawHandOver" | "issueCode">;
  readonly source: Pick<CourtsideSource, "matchCard" | "dayBoard">;
  readonly writeAudit: ApiStore["writeAudit"];
  readonly wallMs: () => number;
}

const TROUBLE = {
  not_lead: "not_lead",
  no_code: "no_court",
  too_many_tries: "too_many",
} as const satisfies Record<HandOverRefusal, HandOverRefusalCode>;

interface Allowed {
  readonly by: AccountPrincipal | CourtsidePrincipal;
  /** Absent: the match is on no court yet. */
  readonly court?: { readonly dayId: string; readonly courtId: string };
}

/** Staff for the matches of their academy, a court's phone for those of its court; others are told as little as ever. */
const allow = async (
  { auth, source }: HandOverMeans,
  cookieHeader: string | undefined,
  matchId: string,
): Promise<Result<Allowed, HandOverRefusalCode>> => {
  const found = await whoSpeaks(auth, source, { cookieHeader, matchId });
  if (!found.ok) return err(found.error);
  const by = found.value;
  if (by.kind === "wall") return err("forbidden");
  const match = await source.matchCard({ academyId: by.academyId, matchId });
  if (!match) return err("unknown_match");
  const { dayId, courtId } = match;
  const here = by.kind === "account" || (dayId === by.dayId && courtId === by.courtId);
  if (!here) return err("unknown_match");
  return ok(dayId !== null && courtId !== null ? { by, court: { dayId, courtId } } : { by });
};

/** The court has no code yet, or only one that can be used no more: staff give it one. */
const issueFor = async (
  { auth, source, writeAudit, wallMs }: HandOverMeans,
  by: AccountPrincipal,
  { dayId, courtId }: { readonly dayId: string; readonly courtId: string },
): Promise<Result<void, HandOverRefusalCode>> => {
  const { academyId, memberId } = by;
  const board = await source.dayBoard({ academyId, dayId });
  if (!board) return err("no_court");
  const expiresMs = codesEndMs(board.day.date, board.timeZone);
  if (expiresMs <= wallMs()) return err("day_over");
  const issued = await auth.issueCode({ academyId, kind: "court", dayId, courtId, by: memberId, expiresMs });
  if (!issued.ok) return err(issued.error === "already_past" ? "day_over" : "no_court");
  await writeAudit({ academyId, actor: memberId, action: "code.issue", subject: issued.value.codeId });
  return ok(undefined);
};

/** A code for the lead of a match, for the phone that leads it. */
export const makeHandOver = async (
  means: HandOverMeans,
  cookieHeader: string | undefined,
  { matchId, laneId, level }: HandOverAsk,
): Promise<Result<HandOverCode, HandOverRefusalCode>> => {
  const { auth, writeAudit, wallMs } = means;
  const allowed = await allow(means, cookieHeader, matchId);
  if (!allowed.ok) return allowed;
  const { by, court } = allowed.value;
  if (!court) return err("no_court");
  const ask = () => auth.makeHandOver({ by, matchId, laneId, level, court });
  let made = await ask();
  if (!made.ok && made.error === "no_code" && by.kind === "account") {
    const issued = await issueFor(means, by, court);
    if (!issued.ok) return issued;
    made = await ask();
  }
  if (!made.ok) return err(TROUBLE[made.error]);
  const { handOverId, code, endsMs } = made.value;
  const actor = by.kind === "account" ? by.memberId : by.sessionId;
  await writeAudit({ academyId: by.academyId, actor, action: "handOver.make", subject: handOverId });
  return ok({ code, endsInMs: endsMs - wallMs() });
};

/** Ends what the lane's codes are worth; that there was none is as good. */
export const withdrawHandOver = async (
  means: HandOverMeans,
  cookieHeader: string | undefined,
  { matchId, laneId }: HandOverLane,
): Promise<Result<void, HandOverRefusalCode>> => {
  const allowed = await allow(means, cookieHeader, matchId);
  if (!allowed.ok) return allowed;
  await means.auth.withdrawHandOver({ by: allowed.value.by, matchId, laneId });
  return ok(undefined);
};
