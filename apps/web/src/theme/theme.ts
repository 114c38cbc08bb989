export const THEMES = ["light", "dark"] as const;
/** A person's choice for this device; without one the system's setting holds. */
export type Theme = (typeof THEMES)[number];

export const THEME_COOKIE = "courtloom_theme";

export const parseTheme = (value: string | undefined): Theme | undefined =>
  THEMES.find((theme) => theme === value);
