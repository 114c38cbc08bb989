/**
 * A cookie for the browser. A server action passes `name`, `value` and `options` to its framework;
 * a plain response appends `header` as it is.
 */
export interface SetCookie {
  readonly name: string;
  readonly value: string;
  readonly options: CookieOptions;
  /** The whole `Set-Cookie` header. */
  readonly header: string;
}

export interface CookieOptions {
  readonly httpOnly: true;
  readonly sameSite: "lax";
  readonly path: "/";
  readonly secure: boolean;
  /** Seconds; 0 removes the cookie. */
  readonly maxAge: number;
}

/** Builds a cookie that scripts cannot read and other sites' posts do not carry. */
export const makeSetCookie = (
  name: string,
  value: string,
  { secure, maxAge }: { readonly secure: boolean; readonly maxAge: number },
): SetCookie => ({
  name,
  value,
  options: { httpOnly: true, sameSite: "lax", path: "/", secure, maxAge },
  header: [
    `${name}=${encodeURIComponent(value)}`,
    "Path=/",
    `Max-Age=${maxAge}`,
    "HttpOnly",
    "SameSite=Lax",
    ...(secure ? ["Secure"] : []),
  ].join("; "),
});
