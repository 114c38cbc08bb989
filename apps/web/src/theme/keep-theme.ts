"use server";
import { cookies } from "next/headers";
import { parseTheme, THEME_COOKIE } from "./theme.ts";

const ONE_YEAR_S = 31_536_000;

/** Keeps a device's theme in its cookie, so that the next page is drawn in it from the start; anything else forgets it. */
export const keepTheme = async (wish: string): Promise<void> => {
  const jar = await cookies();
  const theme = parseTheme(wish);
  if (theme === undefined) jar.delete(THEME_COOKIE);
  else jar.set(THEME_COOKIE, theme, { path: "/", maxAge: ONE_YEAR_S, sameSite: "lax", httpOnly: true });
};
