export type { AccountsDatabase, AccountTables, MemoryTables } from "./accounts-database.ts";
export type {
  AccountRefusal,
  ActiveCode,
  ActiveCourtside,
  Auth,
  AuthOptions,
  CodeRefusal,
  DirectorRefusal,
  HandedOver,
  HandOverRefusal,
  IssueRefusal,
  NewAccount,
  PadCodeRefusal,
  PadEntered,
  PasswordRefusal,
  Preference,
  SessionRefusal,
  SignedIn,
  SignInRefusal,
} from "./auth.ts";
export { ACCOUNT_REFUSALS } from "./auth.ts";
export type {
  AcceptedHandOver,
  AuthStore,
  CodeKind,
  CodeRow,
  FoundCode,
  FoundCourtside,
  FoundHandOver,
  HandOverLevel,
  LeadHolder,
  LeadLaneRef,
  ListedCourtside,
  MemberRole,
  Membership,
  NewCourtside,
  NewHandOver,
  TryCount,
} from "./auth-store.ts";
export { CODE_KINDS, HAND_OVER_LEVELS } from "./auth-store.ts";
export { ADVISED_PASSWORD, LONGEST_PASSWORD, SHORTEST_PASSWORD } from "./check-password.ts";
export { CODE_LENGTH } from "./code-text.ts";
export { createAuth } from "./create-auth.ts";
export type { CookieOptions, SetCookie } from "./set-cookie.ts";
