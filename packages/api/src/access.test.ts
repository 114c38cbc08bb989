import { describe, expect, it } from "vitest";
import { ACCESS, type Audience, type ProcedurePath } from "./access.ts";
import { appRouter } from "./router.ts";
import { ask, readAnswer } from "./testing/ask.ts";
import { makeApi, ROLES, type Role } from "./testing/make-api.ts";
import { sampleInputs } from "./testing/sample-inputs.ts";
import { seedDay } from "./testing/seed-day.ts";

const PATHS = Object.keys(ACCESS) as ProcedurePath[];

const ALLOWED: Record<Audience, readonly Role[]> = {
  anyone: ROLES,
  staff: ["coach", "director"],
  director: ["director"],
};

const REFUSAL: Record<Role, string> = {
  nobody: "signed_out",
  expired: "code_expired",
  wall: "forbidden",
  courtside: "forbidden",
  coach: "forbidden",
  director: "forbidden",
};

/** What an open procedure says when the academy stands already: refused for the state, not for the person. */
const OPEN_ANSWERS: Partial<Record<ProcedurePath, string>> = {
  "setup.createAcademy": "already_set_up",
  "setup.loadDemo": "already_set_up",
  "account.enterDemo": "no_demo",
};

describe("authority", () => {
  it("[AP2] names every procedure of the router and no other", () => {
    expect(Object.keys(appRouter._def.procedures).sort()).toEqual([...PATHS].sort());
  });

  for (const path of PATHS) {
    for (const role of ROLES) {
      const allowed = ALLOWED[ACCESS[path]].includes(role);
      it(`[AP2] ${path}: ${role} is ${allowed ? "answered" : "refused"}`, async () => {
        const api = await makeApi();
        const academyId = await api.setup();
        const { kind, input } = sampleInputs(await seedDay(api, academyId))[path];
        const before = api.writeCount();
        const answer = await readAnswer(await api.handlerAs(role, academyId)(ask(path, kind, input)));
        if (allowed) {
          expect(answer.reason).toBe(OPEN_ANSWERS[path]);
          return;
        }
        expect(answer.reason).toBe(REFUSAL[role]);
        expect(api.writeCount()).toBe(before);
      });
    }
  }

  for (const path of PATHS.filter((each) => ACCESS[each] !== "anyone")) {
    it(`[AP3] ${path}: a director of another academy finds none of its rows`, async () => {
      const api = await makeApi();
      const own = await api.setup();
      const foreign = await api.setup(true);
      const ids = await seedDay(api, own);
      const { kind, input } = sampleInputs(ids)[path];
      const before = structuredClone({ rows: api.memory.rows.matches, codes: api.accounts.codes });
      const answer = await readAnswer(await api.handlerAs("director", foreign)(ask(path, kind, input)));
      for (const id of Object.values(ids)) expect(answer.text).not.toContain(id);
      expect({ rows: api.memory.rows.matches, codes: api.accounts.codes }).toEqual(before);
      const namesRow = input !== undefined && Object.keys(input as object).some((key) => key.endsWith("Id"));
      if (namesRow) expect(answer.status).toBe(404);
    });
  }
});
