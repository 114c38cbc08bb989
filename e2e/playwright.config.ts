import { readFileSync } from "node:fs";
import { defineConfig } from "@playwright/test";

/** Which browser set-up found: `{}` for Playwright's own. */
const browser = (): { executablePath?: string } => {
  try {
    return JSON.parse(readFileSync(new URL("../.tmp/browser.json", import.meta.url), "utf8"));
  } catch {
    throw new Error('No browser was set up yet. Run "npm test" once; it finds or installs one.');
  }
};

export default defineConfig({
  testDir: ".",
  testMatch: "**/*.spec.ts",
  outputDir: "../.tmp/e2e/results",
  // The machine has two cores and the product needs them: one flow after another.
  workers: 1,
  fullyParallel: false,
  timeout: 240_000,
  expect: { timeout: 15_000 },
  reporter: "list",
  use: {
    actionTimeout: 15_000,
    navigationTimeout: 30_000,
    trace: "retain-on-failure",
    screenshot: "only-on-failure",
    launchOptions: {
      ...browser(),
      args: [
        "--no-sandbox",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
      ],
    },
  },
});
