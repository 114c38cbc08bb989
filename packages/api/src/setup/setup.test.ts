import { describe, expect, it } from "vitest";
import { ask, readAnswer } from "../testing/ask.ts";
import { makeApi } from "../testing/make-api.ts";

const WANTED = {
  name: "  Curlew   Reach ",
  timeZone: "Europe/Lisbon",
  directorName: "Maren H.",
  email: "maren@curlew-reach.example",
  password: "tide table heron",
};

describe("setting up", () => {
  it("[AP5] makes the academy with its director and signs them in", async () => {
    const api = await makeApi();
    const nobody = api.callerAs("nobody", "");
    expect(await nobody.setup.status()).toEqual({
      hasAcademy: false,
      hasDemo: false,
      demo: { kind: "idle" },
    });
    await nobody.setup.createAcademy(WANTED);
    expect(api.memory.rows.academies).toMatchObject([{ name: "Curlew Reach", isDemo: false }]);
    expect(api.cookies).toHaveLength(1);
    expect((await nobody.setup.status()).hasAcademy).toBe(true);
  });

  it("[AP5] happens once: a second academy and a demonstration are refused afterwards", async () => {
    const api = await makeApi();
    await api.setup();
    const nobody = api.callerAs("nobody", "");
    await expect(nobody.setup.createAcademy(WANTED)).rejects.toMatchObject({ code: "CONFLICT" });
    await expect(nobody.setup.loadDemo({})).rejects.toMatchObject({ code: "CONFLICT" });
    expect(api.accounts.accounts).toEqual([]);
    expect(api.demoStarts()).toBe(0);
  });

  it("[AP5] makes no academy when the account is refused", async () => {
    const api = await makeApi();
    const answer = await readAnswer(
      await api.handlerAs(
        "nobody",
        "",
      )(ask("setup.createAcademy", "mutation", { ...WANTED, password: "tide" })),
    );
    expect(answer.reason).toBe("password_too_short");
    expect(api.writeCount()).toBe(0);
  });

  it.each(["Mars/Olympus", "+01:00", "", "UTC; drop", "europe"])(
    "[AP5] refuses the time zone %j beside its field",
    async (timeZone) => {
      const api = await makeApi();
      const request = ask("setup.createAcademy", "mutation", { ...WANTED, timeZone });
      const { reason, text } = await readAnswer(await api.handlerAs("nobody", "")(request));
      expect(reason).toBe("bad_input");
      expect(JSON.parse(text).error.data.fields.timeZone).toContain("time zone");
    },
  );

  it("[AP5] loads the demonstration beside the request; one without a day is not complete", async () => {
    const api = await makeApi();
    const nobody = api.callerAs("nobody", "");
    expect(await nobody.setup.loadDemo({})).toMatchObject({ kind: "loading" });
    expect(api.demoStarts()).toBe(1);
    const academyId = await api.setup(true);
    expect((await nobody.setup.status()).hasDemo).toBe(false);
    await api.callerAs("director", academyId).day.create({ name: "a", date: "2026-05-30", courts: 1 });
    expect((await nobody.setup.status()).hasDemo).toBe(true);
  });
});
