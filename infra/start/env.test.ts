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

  const faultsOf = (source: Record<string, string>): readonly string[] => {
    const read = readEnv(source, ROOT);
    return read.ok ? [] : read.error;
  };

  it("[ST2] [ST26] has a port of its own for https", () => {
    expect(readEnv({}, ROOT)).toMatchObject({ value: { httpsPort: 3443 } });
    expect(readEnv({ PORT: "3443" }, ROOT)).toMatchObject({ value: { port: 3443, httpsPort: 3444 } });
    expect(faultsOf({ PORT: "80", HTTPS_PORT: "443" })).toEqual([]);
    expect(faultsOf({ HTTPS_PORT: "3000" })).toEqual([expect.stringContaining("both 3000")]);
    expect(faultsOf({ HTTPS_PORT: "x" })).toEqual([expect.stringContaining("HTTPS_PORT=3444")]);
  });

  it("[ST2] [ST31] takes a certificate of one's own with its key and its address only", () => {
    const whole = { TLS_CERT: "tls/cert.pem", TLS_KEY: "/etc/key.pem", PUBLIC_URL: "https://courts.example" };
    expect(readEnv(whole, ROOT)).toMatchObject({
      value: {
        certificateFiles: { certFile: "/srv/courtloom/tls/cert.pem", keyFile: "/etc/key.pem" },
        inherited: { PUBLIC_URL: "https://courts.example" },
      },
    });
    expect(faultsOf({ TLS_CERT: "c" })).toEqual([expect.stringContaining("TLS_KEY is not")]);
    expect(faultsOf({ TLS_KEY: "k" })).toEqual([expect.stringContaining("TLS_CERT is not")]);
    expect(faultsOf({ TLS_CERT: "c", TLS_KEY: "k" })).toEqual([expect.stringContaining("PUBLIC_URL")]);
  });

  it("[ST2] [ST29] says which part of TRUSTED_PROXY is no address", () => {
    const read = readEnv({ TRUSTED_PROXY: "127.0.0.1" }, ROOT);
    expect(read.ok && read.value.isTrustedProxy("127.0.0.1")).toBe(true);
    expect(faultsOf({ TRUSTED_PROXY: "127.0.0.1, proxy" })).toEqual([expect.stringContaining('"proxy"')]);
  });

  it("[ST8] lets children inherit all but the owner's way into the database", () => {
    const source = { PATH: "/bin", DATABASE_URL: "postgres://u:p@h/d", PGPASSWORD: "p", PGUSER: "u" };
    expect(readEnv(source, ROOT)).toMatchObject({ value: { inherited: { PATH: "/bin" } } });
    const read = readEnv(source, ROOT);
    expect(read.ok && Object.keys(read.value.inherited)).toEqual(["PATH"]);
  });
});
