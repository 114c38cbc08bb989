import type { Leader } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { handedLeadStep } from "./handed-lead.ts";
import type { LaneStatus } from "./lane-status.ts";

const leader = (takeOverInMs: number): Leader => ({
  by: "Dana H.",
  heardMs: 100,
  serverMs: 4_100,
  takeOverInMs,
});
const step = (over: Partial<LaneStatus>, epoch = 0) =>
  handedLeadStep(
    { signal: "connecting", unsent: 0, rejected: [], others: [], unstored: false, ...over },
    { epoch },
  );
const waits = (takeOverInMs: number) =>
  ({ signal: "refused", refusal: "lead_taken", leader: leader(takeOverInMs) }) as const;

describe("a phone that was handed the lead", () => {
  it("[SY30] asks for it by itself once the server says that it may", () => {
    expect(step({})).toBe("wait");
    expect(step({ signal: "noSignal" }, 1)).toBe("wait");
    expect(step(waits(0))).toBe("ask");
    expect(step({ signal: "open" }, 2)).toBe("done");
  });

  it("[SY30] a lane that led before sends all of it first", () => {
    const lost = { signal: "open", leader: leader(0) } as const;
    expect(step({ ...lost, unsent: 2 }, 1)).toBe("wait");
    expect(step(lost, 1)).toBe("ask");
  });

  it("[SY31] forgets the wish when the lead is not to be had at once, or not at all, and with the link", () => {
    expect(step(waits(30_000))).toBe("done");
    expect(step({ signal: "refused", refusal: "sealed" })).toBe("done");
    expect(step({ signal: "noSignal", leader: leader(0) })).toBe("done");
  });
});
