import { describe, expect, it } from "vitest";
import { ERROR_CODES } from "./errors/error-code.ts";
import { ERROR_TEXT } from "./errors/error-text.ts";
import { failure } from "./errors/failure.ts";
import { createHandler } from "./handler.ts";
import { ask, readAnswer } from "./testing/ask.ts";
import { makeApi, ORIGIN } from "./testing/make-api.ts";

const failing = async (error: Error) => {
  const api = await makeApi();
  const reported: unknown[] = [];
  const context = api.contextAs("director", await api.setup());
  const store = { ...context.store, listDays: () => Promise.reject(error) };
  const handle = createHandler({
    endpoint: "/api/trpc",
    createContext: () => ({ ...context, store }),
    report: (each) => reported.push(each),
  });
  return { answer: await readAnswer(await handle(ask("day.list", "query", undefined))), reported };
};

const post = (headers: Record<string, string>, body = "{}"): Request =>
  new Request(`${ORIGIN}/api/trpc/account.enterDemo`, { method: "POST", headers, body });

const JSON_TYPE = { "content-type": "application/json" };

describe("errors", () => {
  it("[AP4] have a status and a sentence that ends for every code", () => {
    for (const code of ERROR_CODES) {
      expect(failure(code).message).toBe(ERROR_TEXT[code]);
      expect(ERROR_TEXT[code]).toMatch(/[.!]$/);
    }
  });

  it("[AP4] say that a database is away, so that trying again helps, and report nothing", async () => {
    const { answer, reported } = await failing(new Error("away"));
    expect(answer).toMatchObject({ status: 503, reason: "unavailable" });
    expect(reported).toEqual([]);
  });

  it("[AP4] keep a fault to the log: the caller learns nothing of it", async () => {
    const secret = "relation players: Noor V.";
    const { answer, reported } = await failing(new Error(secret));
    expect(answer).toMatchObject({ status: 500, reason: "unexpected" });
    expect(answer.text).not.toContain("Noor");
    expect(reported).toMatchObject([{ message: secret }]);
  });

  it("[AP4] answer even when the context itself cannot be made", async () => {
    const handle = createHandler({
      endpoint: "/api/trpc",
      createContext: () => {
        throw new Error("APP_DATABASE_URL is not set");
      },
      report: () => undefined,
    });
    const answer = await readAnswer(await handle(ask("day.list", "query", undefined)));
    expect(answer).toMatchObject({ status: 500, reason: "unexpected" });
    expect(answer.text).not.toContain("DATABASE");
  });
});

describe("what reaches a procedure", () => {
  it.each([
    ["no origin", post(JSON_TYPE), "forbidden_origin"],
    ["another site's page", post({ ...JSON_TYPE, origin: "http://evil.example" }), "forbidden_origin"],
    ["the same name on another port", post({ ...JSON_TYPE, origin: `${ORIGIN}:81` }), "forbidden_origin"],
    ["a form", post({ origin: ORIGIN, "content-type": "text/plain" }), "not_json"],
    ["too much", post({ ...JSON_TYPE, origin: ORIGIN }, `"${"x".repeat(70_000)}"`), "too_large"],
    ["a change by GET", new Request(`${ORIGIN}/api/trpc/account.enterDemo`), "wrong_method"],
    ["a long address", ask("day.get", "query", { dayId: "x".repeat(5000) }), "too_large"],
  ])("[AP6] refuses %s", async (_what, request, reason) => {
    const api = await makeApi();
    const academyId = await api.setup();
    expect(await readAnswer(await api.handlerAs("director", academyId)(request))).toMatchObject({ reason });
  });

  it("[AP6] may never be kept by a cache", async () => {
    const api = await makeApi();
    const handle = api.handlerAs("nobody", "");
    expect((await handle(ask("setup.status", "query", undefined))).headers.get("cache-control")).toBe(
      "no-store",
    );
    expect((await handle(post(JSON_TYPE))).headers.get("cache-control")).toBe("no-store");
  });
});
