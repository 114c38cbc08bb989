import { describe, expect, it } from "vitest";
import { readLiveEnv } from "./env.ts";

const variables = {
  APP_DATABASE_URL: "postgres://app@127.0.0.1/c",
  AUTH_DATABASE_URL: "postgres://auth@127.0.0.1/c",
  COURTLOOM_SECRET: "s".repeat(32),
  LIVE_PORT: "24001",
  INSTANCE_ID: "start-1",
};

describe("the environment", () => {
  it("[LV28] is read whole, and https decides the cookies' name", () => {
    expect(readLiveEnv(variables)).toEqual({
      appDatabaseUrl: variables.APP_DATABASE_URL,
      authDatabaseUrl: variables.AUTH_DATABASE_URL,
      secret: variables.COURTLOOM_SECRET,
      port: 24_001,
      instanceId: "start-1",
      secureCookies: false,
    });
    expect(readLiveEnv({ ...variables, PUBLIC_URL: "https://courts.example" }).secureCookies).toBe(true);
  });

  it("[LV28] says what is missing or wrong", () => {
    for (const name of Object.keys(variables)) {
      expect(() => readLiveEnv({ ...variables, [name]: "" })).toThrow(new RegExp(`^${name} is not set`));
    }
    expect(() => readLiveEnv({ ...variables, LIVE_PORT: "70000" })).toThrow(/^LIVE_PORT is not a port/);
  });
});
