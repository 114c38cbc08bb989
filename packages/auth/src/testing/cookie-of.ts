import type { SetCookie } from "../set-cookie.ts";

/** The `Cookie` header of a browser that was given these cookies. */
export const cookieOf = (...cookies: readonly SetCookie[]): string =>
  cookies.map(({ name, value }) => `${name}=${encodeURIComponent(value)}`).join("; ");
