"use client";
import { useState, useTransition } from "react";
import { keepTheme } from "../theme/keep-theme.ts";
import { parseTheme, type Theme } from "../theme/theme.ts";
import styles from "./shell.module.css";

const show = (theme: Theme | undefined): void => {
  if (theme === undefined) delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
};

/** Light, dark, or as this device is set: shown at once, kept for the next pages. */
export function ThemeSwitch({ theme: first }: { readonly theme: Theme | undefined }) {
  const [theme, setTheme] = useState(first);
  const [, startKeeping] = useTransition();
  const choose = (wish: string): void => {
    const next = parseTheme(wish);
    setTheme(next);
    show(next);
    startKeeping(() => keepTheme(wish));
  };
  return (
    <select
      className={styles.tool}
      aria-label="Theme of this device"
      value={theme ?? ""}
      onChange={(event) => choose(event.target.value)}
    >
      <option value="">As the device</option>
      <option value="light">Light</option>
      <option value="dark">Dark</option>
    </select>
  );
}
