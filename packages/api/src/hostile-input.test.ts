import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { ACCESS, type ProcedurePath } from "./access.ts";
import { ERROR_CODES } from "./errors/error-code.ts";
import { readAnswer } from "./testing/ask.ts";
import { hostileRequests } from "./testing/hostile-requests.ts";
import { makeApi, ROLES } from "./testing/make-api.ts";
import { sampleInputs } from "./testing/sample-inputs.ts";
import { seedDay } from "./testing/seed-day.ts";

const SEED = 20261125;
const PER_PROCEDURE_AND_ROLE = 24;

describe("hostile input", () => {
  it(`[AP1] is refused by every procedure to every role, and nothing is written (seed ${SEED})`, async () => {
    const api = await makeApi();
    const academyId = await api.setup();
    const samples = sampleInputs(await seedDay(api, academyId));
    const before = api.writeCount();
    let asked = 0;
    for (const path of Object.keys(ACCESS) as ProcedurePath[]) {
      for (const role of ROLES) {
        const handle = api.handlerAs(role, academyId);
        const requests = hostileRequests(path, samples[path], SEED + asked, PER_PROCEDURE_AND_ROLE);
        for (const { what, request } of requests) {
          asked += 1;
          const answer = await readAnswer(await handle(request));
          const where = `${what} to ${path} as ${role}: ${answer.status}`;
          expect(answer.status, where).toBeGreaterThanOrEqual(400);
          expect(answer.status, where).toBeLessThan(500);
          expect(ERROR_CODES, where).toContain(answer.reason);
          expect(answer.text, where).not.toMatch(/at \/|node_modules|stack/);
        }
      }
    }
    console.log(`${asked} hostile requests, seed ${SEED}`);
    expect(asked).toBeGreaterThanOrEqual(2000);
    expect(api.writeCount()).toBe(before);
    expect(api.reported).toEqual([]);
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  }, 60_000);

  it("[AP1] draws the same requests from the same seed", async () => {
    const texts = async () => {
      const drawn = hostileRequests("day.create", { kind: "mutation", input: { name: "a" } }, SEED, 50);
      const parts = await Promise.all(drawn.map(async ({ request }) => request.url + (await request.text())));
      return createHash("sha256").update(parts.join("\n")).digest("hex");
    };
    expect(await texts()).toBe(await texts());
  });
});
