import { err, ok, type Principal } from "@courtloom/core";
import type { MembersOf } from "../alerts/alert-store.ts";
import type { PrincipalOf, SessionRefusal } from "../look-ups.ts";

/** Everybody whom the tests know, by cookie. */
export const PEOPLE = {
  director: {
    kind: "account",
    academyId: "curlew",
    userId: "u1",
    memberId: "mb1",
    name: "Maren H.",
    role: "director",
  },
  coach: {
    kind: "account",
    academyId: "curlew",
    userId: "u2",
    memberId: "mb2",
    name: "Tobias A.",
    role: "coach",
  },
  stranger: {
    kind: "account",
    academyId: "sandbar",
    userId: "u9",
    memberId: "mb9",
    name: "Otto R.",
    role: "director",
  },
  helper: {
    kind: "courtside",
    academyId: "curlew",
    sessionId: "s1",
    name: "Dana H.",
    dayId: "d1",
    courtId: "c1",
  },
  otherHelper: {
    kind: "courtside",
    academyId: "curlew",
    sessionId: "s2",
    name: "Pell O.",
    dayId: "d1",
    courtId: "c2",
  },
  relief: {
    kind: "courtside",
    academyId: "curlew",
    sessionId: "s4",
    name: "Rosa T.",
    dayId: "d1",
    courtId: "c1",
  },
  wall: { kind: "wall", academyId: "curlew", sessionId: "s3", dayId: "d1" },
} as const satisfies Readonly<Record<string, Principal>>;

export type Person = keyof typeof PEOPLE;

/** What a device holds: one person's session, or an account and a court's code at once. */
export type Cookie = Person | `${Person}+${Person}`;

export interface Sessions {
  readonly principalOf: PrincipalOf;
  /** From now on this person's session is refused. */
  readonly revoke: (person: Person, refusal: SessionRefusal) => void;
}

/** Sessions whose cookie is the person's name; of two, the first is the account and the second the court's code. */
export const createSessions = (): Sessions => {
  const revoked = new Map<string, SessionRefusal>();
  const people = new Map<string, Principal>(Object.entries(PEOPLE));
  const find = (name: string): Awaited<ReturnType<PrincipalOf>> => {
    const found = people.get(name);
    const refusal = revoked.get(name);
    return found && !refusal ? ok(found) : err(refusal ?? "signed_out");
  };
  return {
    principalOf: async (cookie, speaks) => {
      const names = (cookie ?? "").split("+");
      const tried = (speaks === "courtside" ? names.toReversed() : names).map(find);
      return tried.find((each) => each.ok) ?? tried[0] ?? err("signed_out");
    },
    revoke: (person, refusal) => void revoked.set(person, refusal),
  };
};

/** The staff of an academy among them. */
export const membersOf: MembersOf = async ({ academyId }) =>
  Object.values(PEOPLE).flatMap((one) =>
    one.kind === "account" && one.academyId === academyId
      ? [{ memberId: one.memberId, displayName: one.name, role: one.role }]
      : [],
  );
