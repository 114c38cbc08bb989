import "server-only";
import { cookies } from "next/headers";
import { parseTheme, THEME_COOKIE, type Theme } from "../theme/theme.ts";

/** The theme that this device asked for; undefined follows the system's. */
export const readTheme = async (): Promise<Theme | undefined> =>
  parseTheme((await cookies()).get(THEME_COOKIE)?.value);
