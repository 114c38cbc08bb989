/** Who is asking, worked out from a session by the server and never taken from a message. */
export type Principal = AccountPrincipal | CourtsidePrincipal | WallPrincipal;

/** A signed-in member of an academy. */
export interface AccountPrincipal {
  readonly kind: "account";
  readonly academyId: string;
  readonly userId: string;
  readonly memberId: string;
  readonly name: string;
  readonly role: "director" | "coach";
}

/** Somebody with a court code: charts the matches of one court of one day and sees nothing else. */
export interface CourtsidePrincipal {
  readonly kind: "courtside";
  readonly academyId: string;
  readonly sessionId: string;
  readonly name: string;
  readonly dayId: string;
  readonly courtId: string;
}

/** A screen opened with a wall code: the public board of one day. */
export interface WallPrincipal {
  readonly kind: "wall";
  readonly academyId: string;
  readonly sessionId: string;
  readonly dayId: string;
}
