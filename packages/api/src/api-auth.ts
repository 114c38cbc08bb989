import type { Result } from "@courtloom/core";

/** A cookie as a plain response sends it. */
export interface CookieHeader {
  readonly header: string;
}

type AccountTrouble =
  | "bad_email"
  | "bad_name"
  | "password_too_short"
  | "password_too_long"
  | "password_too_common"
  | "email_taken";

/** A code that a director reads out. Times in ms since 1970. */
export interface IssuedCode {
  readonly codeId: string;
  readonly kind: "court" | "wall";
  readonly courtId: string | null;
  /** Six characters; undefined when it can no longer be read and another has to be issued. */
  readonly code: string | undefined;
  readonly expiresMs: number;
}

/** A phone or a wall that is in with a code. `name` is what its chartist calls themselves; empty for a wall. */
export interface PhoneInUse {
  readonly sessionId: string;
  readonly kind: "court" | "wall";
  readonly courtId: string | null;
  readonly name: string;
  readonly openedMs: number;
}

/** What the procedures need of accounts and codes. Every call throws when its database is away. */
export interface ApiAuth {
  readonly createDirector: (account: {
    readonly email: string;
    readonly password: string;
    readonly name: string;
  }) => Promise<Result<{ readonly userId: string }, AccountTrouble | "already_set_up">>;
  readonly signIn: (input: {
    readonly email: string;
    readonly password: string;
    readonly address: string;
    readonly cookieHeader?: string | undefined;
  }) => Promise<Result<{ readonly setCookie: CookieHeader }, "wrong_credentials" | "too_many_tries">>;
  readonly enterDemo: (
    cookieHeader?: string | undefined,
  ) => Promise<Result<{ readonly setCookie: CookieHeader }, "no_demo">>;
  readonly issueCode: (input: {
    readonly academyId: string;
    readonly kind: "court" | "wall";
    readonly dayId: string;
    readonly courtId?: string | undefined;
    readonly by: string;
    readonly expiresMs: number;
  }) => Promise<Result<{ readonly codeId: string; readonly code: string }, "court_needed" | "already_past">>;
  readonly activeCodes: (academyId: string, dayId: string) => Promise<readonly IssuedCode[]>;
  readonly revokeCode: (academyId: string, codeId: string) => Promise<boolean>;
  readonly activeCourtside: (academyId: string, dayId: string) => Promise<readonly PhoneInUse[]>;
  readonly revokeCourtside: (academyId: string, sessionId: string) => Promise<boolean>;
}
