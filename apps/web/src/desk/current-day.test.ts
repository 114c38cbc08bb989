import { describe, expect, it } from "vitest";
import { currentDay } from "./current-day.ts";
import { sayDate } from "./say-date.ts";

const day = (date: string) => ({ dayId: date, date });
const at = Date.parse("2026-05-30T23:30:00Z");

describe("the current day", () => {
  it("[WB4] is today's by the academy's clocks, not the server's", () => {
    const days = [day("2026-05-31"), day("2026-05-30")];
    expect(currentDay(days, "Etc/UTC", at)?.date).toBe("2026-05-30");
    expect(currentDay(days, "Europe/Lisbon", at)?.date).toBe("2026-05-31");
  });

  it("[WB4] is else the next one, else the last one that was", () => {
    expect(currentDay([day("2026-06-20"), day("2026-06-06"), day("2026-05-01")], "Etc/UTC", at)?.date).toBe(
      "2026-06-06",
    );
    expect(currentDay([day("2026-04-01"), day("2026-05-01")], "Etc/UTC", at)?.date).toBe("2026-05-01");
    expect(currentDay([], "Etc/UTC", at)).toBeUndefined();
  });

  it("[WB4] says a date the same in every zone", () => {
    expect(sayDate("2026-05-30")).toBe("Sat, 30 May 2026");
  });
});
