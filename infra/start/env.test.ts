import { describe, expect, it } from "vitest";
import { readEnv } from "./env.ts";

const ROOT = "/srv/courtloom";

describe("readEnv", () => {
  it("[ST2] has a default for everything", () => {
    expect(readEnv({ PORT: " ", DATA_DIR: "" }, ROOT)).toMatchObject({
      ok: true,
      value: {
        port: 3000,
        host: undefined,
        dataDir: "/srv/courtloom/.data",
        databaseUrl: undefined,
        publicUrl: undefined,
        secret: undefined,
      },
    });
  });

  it("[ST2] takes what is set", () => {
    const secret = "s".repeat(32);
    const source = { PORT: "8080", HOST: "127.0.0.1", DATA_DIR: "/data", COURTLOOM_SECRET: secret };
    const urls = { DATABASE_URL: "postgres://u:p@h/d", PUBLIC_URL: "https://courts.example/" };
    expect(readEnv({ ...source, ...urls }, ROOT)).toMatchObject({
      ok: true,
      value: {
        port: 8080,
        host: "127.0.0.1",
        dataDir: "/data",
        databaseUrl: "postgres://u:p@h/d",
        publicUrl: "https://courts.example",
        secret,
      },
    });
  });

  it.each(["0", "65536", "-1", "3000x", "3e3", "1.5"])("[ST2] says that PORT=%s is no port", (port) => {
    const result = readEnv({ PORT: port }, ROOT);
    expect(result).toMatchObject({ ok: false, error: [expect.stringContaining(`PORT is "${port}"`)] });
  });

  it("[ST2] names every fault at once, without the password", () => {
    const source = {
      PORT: "x",
      DATABASE_URL: "mysql://u:hidden@h/d",
      PUBLIC_URL: "courts",
      COURTLOOM_SECRET: "short",
    };
    const result = readEnv(source, ROOT);
    if (result.ok) throw new Error("should fail");
    expect(result.error).toHaveLength(4);
    expect(result.error.join()).not.toContain("hidden");
  });

  it("[ST8] lets children inherit all but the owner's way into the database", () => {
    const source = { PATH: "/bin", DATABASE_URL: "postgres://u:p@h/d", PGPASSWORD: "p", PGUSER: "u" };
    expect(readEnv(source, ROOT)).toMatchObject({ value: { inherited: { PATH: "/bin" } } });
    const read = readEnv(source, ROOT);
    expect(read.ok && Object.keys(read.value.inherited)).toEqual(["PATH"]);
  });
});
