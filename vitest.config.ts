import { defineConfig } from "vitest/config";

const IGNORED = ["**/node_modules/**", "**/.next*/**", "e2e/**"];

/** Two rooms: what needs nothing, and what needs a Postgres, which is started only for the second. */
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: "unit",
          include: ["**/*.test.{ts,tsx}"],
          exclude: [...IGNORED, "**/*.pg.test.ts"],
          // A limit against hanging, not a measure of speed: a busy machine is several times slower.
          testTimeout: 30_000,
        },
      },
      {
        test: {
          name: "pg",
          include: ["**/*.pg.test.ts"],
          exclude: IGNORED,
          globalSetup: ["infra/test/postgres.ts"],
          testTimeout: 30_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
