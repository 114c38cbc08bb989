import { existsSync, readFileSync } from "node:fs";
import { type Browser, chromium } from "@playwright/test";

const FOUND = new URL("../../.tmp/browser.json", import.meta.url);

/** The Chromium that set-up found, without a window. Benches speak its own protocol, so no other browser will do. */
export const openBrowser = async (): Promise<Browser> => {
  if (!existsSync(FOUND))
    throw new Error('No browser was set up yet. Run "npm test" once; it finds or installs one.');
  const found = JSON.parse(readFileSync(FOUND, "utf8")) as { readonly executablePath?: string };
  return chromium.launch({
    ...found,
    args: ["--no-sandbox", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  });
};
