/** What a member of an academy may do; only these two roles have accounts that open staff screens. */
export type MemberRole = "director" | "coach";

/** The academy that a user acts for. */
export interface Membership {
  readonly academyId: string;
  readonly memberId: string;
  readonly name: string;
  readonly role: MemberRole;
}

export const CODE_KINDS = ["court", "wall"] as const;
export type CodeKind = (typeof CODE_KINDS)[number];

/** A code as it is kept. `courtId` is there exactly when `kind` is "court". Times in ms since 1970. */
export interface CodeRow {
  readonly codeId: string;
  readonly academyId: string;
  readonly kind: CodeKind;
  readonly dayId: string;
  readonly courtId: string | null;
  /** Keyed hash of the clear code, for finding it. */
  readonly codeHash: string;
  /** The clear code, sealed with a key made from the secret, so that a director can read it out again. */
  readonly codeSealed: string;
  readonly issuedBy: string;
  readonly issuedMs: number;
  readonly expiresMs: number;
  readonly revokedMs: number | null;
}

/** What has to be known of a code when somebody types it. */
export type FoundCode = Pick<
  CodeRow,
  "academyId" | "codeId" | "kind" | "dayId" | "courtId" | "expiresMs" | "revokedMs"
>;

/** A phone or a wall that came in with a code. `name` is what the chartist calls themselves; empty for a wall. */
export interface NewCourtside {
  readonly sessionId: string;
  readonly academyId: string;
  readonly codeId: string;
  readonly tokenHash: string;
  readonly name: string;
  readonly openedMs: number;
  readonly expiresMs: number;
}

/** Such a session together with its code: the earlier expiry, and either's revocation, hold. */
export interface FoundCourtside extends FoundCode {
  readonly sessionId: string;
  readonly name: string;
}

/** One of a day's sessions, as the desk lists them. */
export interface ListedCourtside extends FoundCourtside {
  readonly openedMs: number;
}

/** Who leads a match, or is to: a member by member id, or a courtside session by session id. */
export interface LeadHolder {
  readonly kind: "member" | "courtside";
  readonly id: string;
}

export const HAND_OVER_LEVELS = ["score", "key", "every"] as const;
export type HandOverLevel = (typeof HAND_OVER_LEVELS)[number];

/** The lane that leads a match. */
export interface LeadLaneRef {
  readonly academyId: string;
  readonly matchId: string;
  readonly laneId: string;
}

/** A one-use code by which `laneId` hands the lead over. Times in ms since 1970. */
export interface NewHandOver extends LeadLaneRef {
  readonly handOverId: string;
  readonly codeHash: string;
  /** The court code under which whoever enters it comes in. */
  readonly codeId: string;
  /** Who hands over: the lane has to be theirs. */
  readonly owner: LeadHolder;
  /** At which level the lead charts. */
  readonly level: HandOverLevel;
  readonly madeMs: number;
  readonly endsMs: number;
}

/** A hand-over with the court code that it admits under. */
export interface FoundHandOver extends FoundCode, LeadLaneRef {
  readonly handOverId: string;
  /** Who hands over. */
  readonly chartist: string;
  readonly level: HandOverLevel;
  /** Whether that lane still leads. */
  readonly leads: boolean;
  readonly endsMs: number;
  readonly withdrawnMs: number | null;
  /** Who entered it, and until when they may take the lead. */
  readonly granted: (LeadHolder & { readonly untilMs: number }) | null;
}

export interface AcceptedHandOver {
  readonly academyId: string;
  readonly handOverId: string;
  readonly to: LeadHolder;
  readonly atMs: number;
  readonly untilMs: number;
  /** Opened with it, where `to` is a session that does not exist yet. */
  readonly session?: NewCourtside | undefined;
}

/** How often a key was used in its present window, this time included. */
export interface TryCount {
  readonly count: number;
  /** When the window ends and counting starts anew. */
  readonly resetMs: number;
}

/**
 * What this package needs kept. Look-ups by hash, by token and by user come before the tenant is known and
 * so take no academy; everything else is held to the academy it names. Every time is passed in.
 */
export interface AuthStore {
  /** The membership a user acts with: in an academy of their own rather than a demonstration; undefined when none. */
  readonly membershipOf: (userId: string) => Promise<Membership | undefined>;
  /** The demonstration academy and its first director's user id; undefined when there is no such academy. */
  readonly demoDirector: () => Promise<{ readonly academyId: string; readonly userId: string } | undefined>;
  /** Whether an academy that is not a demonstration was set up, and so has a director. */
  readonly hasDirector: () => Promise<boolean>;

  /** False when a code with this hash is kept already (the caller draws another). */
  readonly addCode: (code: CodeRow) => Promise<boolean>;
  /** Codes of a day that are neither revoked nor expired at `nowMs`, oldest first. */
  readonly activeCodes: (query: {
    readonly academyId: string;
    readonly dayId: string;
    readonly nowMs: number;
  }) => Promise<readonly CodeRow[]>;
  /** False when that academy has no such code. Revoking twice keeps the first time. */
  readonly revokeCode: (query: {
    readonly academyId: string;
    readonly codeId: string;
    readonly atMs: number;
  }) => Promise<boolean>;
  readonly findCode: (codeHash: string) => Promise<FoundCode | undefined>;

  readonly openCourtside: (session: NewCourtside) => Promise<void>;
  readonly findCourtside: (tokenHash: string) => Promise<FoundCourtside | undefined>;
  /** Sessions of a day that may still be used at `nowMs`, oldest first. */
  readonly activeCourtside: (query: {
    readonly academyId: string;
    readonly dayId: string;
    readonly nowMs: number;
  }) => Promise<readonly ListedCourtside[]>;
  /** False when that academy has no such session. Revoking twice keeps the first time. */
  readonly revokeCourtside: (query: {
    readonly academyId: string;
    readonly sessionId: string;
    readonly atMs: number;
  }) => Promise<boolean>;

  /** Keeps it if its lane leads and is the owner's, and ends what that lane made before; all or nothing. */
  readonly addHandOver: (made: NewHandOver) => Promise<"added" | "hash_taken" | "not_lead">;
  readonly findHandOver: (codeHash: string) => Promise<FoundHandOver | undefined>;
  /** False when somebody entered it before, or it has ended; then nothing is written. */
  readonly acceptHandOver: (accepted: AcceptedHandOver) => Promise<boolean>;
  /** Ends what this lane made, also what was entered and not used yet. False when there was nothing. */
  readonly withdrawHandOvers: (
    lane: LeadLaneRef & { readonly owner: LeadHolder; readonly atMs: number },
  ) => Promise<boolean>;

  /** Counts one more use of `key`, atomically; a window of `windowMs` opens with the first. */
  readonly takeTry: (key: string, windowMs: number, nowMs: number) => Promise<TryCount>;
  /** Gives one use back (it turned out not to be a failure); never below zero. */
  readonly returnTry: (key: string) => Promise<void>;
  /** Forgets the key's uses. */
  readonly clearTries: (key: string) => Promise<void>;
}
