import type { Auth, CodeRefusal, SetCookie } from "@courtloom/auth";

/** Why a screen did not get in; closed, each with a sentence. */
export type WallProblem = Exclude<CodeRefusal, "bad_name"> | "court_code" | "other_site" | "unavailable";

export const WALL_PROBLEMS = {
  unknown_code: "There is no such code. Check it with the desk.",
  expired: "That code has run out. Ask the desk for a new one.",
  revoked: "That code was taken back. Ask the desk for a new one.",
  too_many_tries: "Too many tries from this network. Wait a minute, then try again.",
  court_code: "That code is for a phone on court. A wall has a code of its own: ask the desk.",
  other_site: "That came from another page. Type the code here.",
  unavailable: "The server could not check the code. Try again in a moment.",
} satisfies Record<WallProblem, string>;

const isProblem = (text: string): text is WallProblem => Object.hasOwn(WALL_PROBLEMS, text);

/** The sentence for a problem named in an address; undefined for anything else. */
export const problemSentence = (text: string | undefined): string | undefined =>
  text !== undefined && isProblem(text) ? WALL_PROBLEMS[text] : undefined;

export interface WallAnswer {
  /** Where the screen goes, within this site. */
  readonly location: string;
  readonly setCookie?: SetCookie;
}

/**
 * Lets a screen in with a wall code, to the day that the code is for. A court's code opens no wall: its
 * session ends again at once. SPEC rule BD14.
 */
export const enterWall = async (
  auth: Pick<Auth, "enterWithCode" | "revokeCourtside">,
  input: { readonly code: string; readonly address: string },
): Promise<WallAnswer> => {
  const entered = await auth.enterWithCode({ ...input, name: "Wall" });
  if (!entered.ok) {
    const problem = entered.error === "bad_name" ? "unknown_code" : entered.error;
    return { location: `/wall?problem=${problem}` };
  }
  const { principal, setCookie } = entered.value;
  if (principal.kind !== "wall") {
    await auth.revokeCourtside(principal.academyId, principal.sessionId);
    return { location: "/wall?problem=court_code" };
  }
  return { location: `/wall/${principal.dayId}`, setCookie };
};
