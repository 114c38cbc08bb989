import type {
  AccountPrincipal,
  Clock,
  CourtsidePrincipal,
  Principal,
  Result,
  WallPrincipal,
} from "@courtloom/core";
import type { AccountsDatabase } from "./accounts-database.ts";
import type { AuthStore, CodeKind, HandOverLevel } from "./auth-store.ts";
import type { SetCookie } from "./set-cookie.ts";

export interface AuthOptions {
  readonly accounts: AccountsDatabase;
  readonly store: AuthStore;
  /** At least 32 characters, the same on every node. Changing it ends all sessions and makes codes in use unknown. */
  readonly secret: string;
  /** True when people reach the product over https. */
  readonly secureCookies: boolean;
  /** The address people open, where it is fixed ("https://club.example"); without it, the request's own host counts. */
  readonly baseUrl?: string;
  /**
   * The network address behind a request to `handler`, from what the front door (and nobody else) wrote.
   * Without it all requests to `handler` count as one address.
   */
  readonly addressOf?: (headers: Headers) => string | undefined;
  readonly clock: Clock;
}

/** Which of two sessions on one device speaks, when it has both. */
export type Preference = "account" | "courtside";

/** `code_expired`: the code (or this session from it) ended; nothing on the phone is deleted because of it. */
export type SessionRefusal = "signed_out" | "code_expired";

export const ACCOUNT_REFUSALS = [
  "bad_email",
  "bad_name",
  "password_too_short",
  "password_too_long",
  "password_too_common",
  "email_taken",
] as const;
export type AccountRefusal = (typeof ACCOUNT_REFUSALS)[number];

export type DirectorRefusal = AccountRefusal | "already_set_up";
export type SignInRefusal = "wrong_credentials" | "too_many_tries";
export type PasswordRefusal = AccountRefusal | SignInRefusal | "signed_out";
export type CodeRefusal = "bad_name" | "unknown_code" | "expired" | "revoked" | "too_many_tries";
/** `hand_over_used`: somebody entered it. `hand_over_ended`: its time is over, it was withdrawn, or another one leads. */
export type PadCodeRefusal = CodeRefusal | "hand_over_used" | "hand_over_ended";
/** `not_lead`: the lane does not lead the match, or is somebody else's. `no_code`: the court has no code to come in under. */
export type HandOverRefusal = "not_lead" | "no_code" | "too_many_tries";
export type IssueRefusal = "court_needed" | "already_past";

export interface NewAccount {
  readonly email: string;
  /** Without one the account cannot be signed in to with a password. */
  readonly password?: string;
  readonly name: string;
}

export interface SignedIn {
  readonly userId: string;
  readonly setCookie: SetCookie;
}

/** A code as a director sees it: clear, to be read out. */
export interface ActiveCode {
  readonly codeId: string;
  readonly kind: CodeKind;
  readonly dayId: string;
  readonly courtId: string | null;
  /** Six characters; undefined when the secret changed since (issue another). */
  readonly code: string | undefined;
  readonly issuedMs: number;
  readonly expiresMs: number;
}

/** The match whose lead was handed to whoever entered the code. */
export interface HandedOver {
  readonly matchId: string;
  /** Who hands over. */
  readonly by: string;
  /** At which level they chart. */
  readonly level: HandOverLevel;
}

/** Who is in on the pad. `setCookie` is there when a session was opened; somebody who was in before keeps theirs. */
export interface PadEntered {
  readonly principal: CourtsidePrincipal | AccountPrincipal | WallPrincipal;
  readonly setCookie?: SetCookie;
  readonly handedOver?: HandedOver;
}

/** A phone or wall that is in with a code. */
export interface ActiveCourtside {
  readonly sessionId: string;
  readonly codeId: string;
  readonly kind: CodeKind;
  readonly courtId: string | null;
  readonly name: string;
  readonly openedMs: number;
}

export interface Auth {
  /** `POST /api/auth/sign-in/email` and `POST /api/auth/sign-out`; everything else is 404. Never throws. */
  readonly handler: (request: Request) => Promise<Response>;
  /**
   * Who a cookie header speaks for; one principal, never a mixture. `prefer` (default "account") decides
   * when both an account and a courtside session are there. Throws when the database cannot be asked:
   * the caller answers "unavailable".
   */
  readonly principalOf: (
    cookieHeader: string | undefined,
    prefer?: Preference,
  ) => Promise<Result<Principal, SessionRefusal>>;

  /** The first director, at set-up. The caller then makes the academy and the membership. Repeatable until then. */
  readonly createDirector: (
    account: Required<NewAccount>,
  ) => Promise<Result<{ readonly userId: string }, DirectorRefusal>>;
  /** An account for somebody who was invited, or (without a password) for a demonstration. */
  readonly createAccount: (
    account: NewAccount,
  ) => Promise<Result<{ readonly userId: string }, AccountRefusal>>;
  /** A new session; one that the cookie header held before is ended. */
  readonly signIn: (input: {
    readonly email: string;
    readonly password: string;
    readonly address: string;
    readonly cookieHeader?: string | undefined;
  }) => Promise<Result<SignedIn, SignInRefusal>>;
  /** Ends the account session, if there is one. The courtside session stays: it is another principal. */
  readonly signOut: (cookieHeader: string | undefined) => Promise<{ readonly setCookie: SetCookie }>;
  /** Signs in as the director of the demonstration academy, without a password. Never any other academy's. */
  readonly enterDemo: (cookieHeader?: string | undefined) => Promise<Result<SignedIn, "no_demo">>;
  /** Needs the present password; ends all the user's sessions and gives this device a new one. */
  readonly changePassword: (input: {
    readonly cookieHeader: string | undefined;
    readonly current: string;
    readonly next: string;
    readonly address: string;
  }) => Promise<Result<SignedIn, PasswordRefusal>>;
  /** Ends every account session of a user: left, disabled, role changed. */
  readonly endSessionsOf: (userId: string) => Promise<void>;

  /** `courtId` is needed for a court code and left out for a wall code. The caller has checked that the day and court are the academy's. */
  readonly issueCode: (input: {
    readonly academyId: string;
    readonly kind: CodeKind;
    readonly dayId: string;
    readonly courtId?: string | undefined;
    /** Member id of the director. */
    readonly by: string;
    /** End of the day and a few hours, in the academy's time zone. */
    readonly expiresMs: number;
  }) => Promise<Result<{ readonly codeId: string; readonly code: string }, IssueRefusal>>;
  readonly activeCodes: (academyId: string, dayId: string) => Promise<readonly ActiveCode[]>;
  /** Ends the code and every session that came in with it. False when the academy has no such code. */
  readonly revokeCode: (academyId: string, codeId: string) => Promise<boolean>;
  /** `name` is the chartist's, 1 to 40 characters; not asked for a wall code. */
  readonly enterWithCode: (input: {
    readonly code: string;
    readonly name: string;
    readonly address: string;
  }) => Promise<
    Result<
      { readonly setCookie: SetCookie; readonly principal: CourtsidePrincipal | WallPrincipal },
      CodeRefusal
    >
  >;
  /**
   * Lets a phone in with a court's code or a hand-over code; a court's code is entered as by `enterWithCode`.
   * A hand-over code works once, and gives the lead of one match to the session on that court, or the account,
   * whose name this is, or else to a new session under the court's code. Who entered it may enter it again.
   */
  readonly enterPad: (input: {
    readonly code: string;
    readonly name: string;
    readonly address: string;
    readonly cookieHeader: string | undefined;
  }) => Promise<Result<PadEntered, PadCodeRefusal>>;
  /**
   * A one-use code for the lead of a match, in place of exactly `laneId`; it ends after ten minutes, with the
   * next one made, when it is withdrawn and when another lane leads. `court` is where the match is played:
   * a session hands over under its own code, an account under the court's latest.
   */
  readonly makeHandOver: (input: {
    readonly by: AccountPrincipal | CourtsidePrincipal;
    readonly matchId: string;
    readonly laneId: string;
    readonly level: HandOverLevel;
    readonly court: { readonly dayId: string; readonly courtId: string };
  }) => Promise<
    Result<{ readonly handOverId: string; readonly code: string; readonly endsMs: number }, HandOverRefusal>
  >;
  /** Ends the codes that this lane made, also one that was entered and not used yet. False when there was none. */
  readonly withdrawHandOver: (input: {
    readonly by: AccountPrincipal | CourtsidePrincipal;
    readonly matchId: string;
    readonly laneId: string;
  }) => Promise<boolean>;
  readonly activeCourtside: (academyId: string, dayId: string) => Promise<readonly ActiveCourtside[]>;
  /** Ends one phone's session; the code goes on. False when the academy has no such session. */
  readonly revokeCourtside: (academyId: string, sessionId: string) => Promise<boolean>;
  /** Ends this device's courtside session. The account session stays. */
  readonly leaveCourtside: (cookieHeader: string | undefined) => Promise<{ readonly setCookie: SetCookie }>;
}
