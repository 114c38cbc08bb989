import { describe, expect, it } from "vitest";
import { makeApi, NOW_MS } from "../testing/make-api.ts";
import { seedDay } from "../testing/seed-day.ts";
import { codesEndMs } from "./end-of-day.ts";

const iso = (date: string, zone: string) => new Date(codesEndMs(date, zone)).toISOString();

describe("the end of a day's codes", () => {
  it.each([
    ["2026-05-30", "Etc/UTC", "2026-05-31T04:00:00.000Z"],
    ["2026-05-30", "Europe/Lisbon", "2026-05-31T03:00:00.000Z"],
    ["2026-05-30", "Pacific/Kiritimati", "2026-05-30T14:00:00.000Z"],
    ["2026-05-30", "America/Los_Angeles", "2026-05-31T11:00:00.000Z"],
    ["2026-10-24", "Europe/Lisbon", "2026-10-25T03:00:00.000Z"],
    ["2026-10-25", "Europe/Lisbon", "2026-10-26T04:00:00.000Z"],
    ["2026-03-28", "Asia/Kathmandu", "2026-03-28T22:15:00.000Z"],
  ])("[AP7] %s in %s is %s", (date, zone, end) => {
    expect(iso(date, zone)).toBe(end);
  });

  it("[AP7] issues what is missing, once, and ends a code with its phones' way in", async () => {
    const api = await makeApi();
    const academyId = await api.setup();
    const { dayId, codeId } = await seedDay(api, academyId);
    const director = api.callerAs("director", academyId);
    const missing = { dayId, wanted: { kind: "missing" as const } };
    expect((await director.code.issue(missing)).issued.map((each) => each.kind)).toEqual(["court", "court"]);
    expect((await director.code.issue(missing)).issued).toEqual([]);
    const { codes } = await director.code.list({ dayId });
    expect(codes.every((code) => code.expiresMs === codesEndMs("2026-05-30", "Europe/Lisbon"))).toBe(true);
    await director.code.revoke({ codeId });
    expect((await director.code.issue(missing)).issued.map((each) => each.kind)).toEqual(["wall"]);
  });

  it("[AP7] issues none for a day that is over", async () => {
    const api = await makeApi();
    const director = api.callerAs("director", await api.setup());
    const { dayId } = await director.day.create({ name: "Past", date: "2026-05-28", courts: 1 });
    expect(codesEndMs("2026-05-28", "Europe/Lisbon")).toBeLessThan(NOW_MS);
    await expect(director.code.issue({ dayId, wanted: { kind: "wall" } })).rejects.toThrow(
      "This day is over",
    );
  });
});
