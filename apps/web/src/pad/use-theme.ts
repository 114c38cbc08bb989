import { useEffect } from "react";
import type { PadTheme } from "./pad-settings.ts";

/** Shows the page in a theme while the pad is open, and puts back what was there before. */
export const useTheme = (theme: PadTheme): void => {
  useEffect(() => {
    const root = document.documentElement;
    const before = root.dataset.theme;
    const dark = matchMedia("(prefers-color-scheme: dark)");
    const show = () => {
      root.dataset.theme = theme === "auto" ? (dark.matches ? "dark" : "light") : theme;
    };
    show();
    dark.addEventListener("change", show);
    return () => {
      dark.removeEventListener("change", show);
      if (before === undefined) delete root.dataset.theme;
      else root.dataset.theme = before;
    };
  }, [theme]);
};
