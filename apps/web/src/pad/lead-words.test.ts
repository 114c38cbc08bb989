import { foldLog } from "@courtloom/match-log";
import { makeLog, pointsOf } from "@courtloom/match-log/testing";
import { describe, expect, it } from "vitest";
import { type LeadFacts, leadWords } from "./lead-words.ts";

const facts = (over: Partial<LeadFacts> = {}, mayTakeOver = false, silentSeconds = 4) =>
  leadWords({
    leader: { by: "Rosa T.", silentSeconds, mayTakeOver },
    ...{ led: false, hasSignal: true, unsent: 0, ...over },
  });

describe("while another phone leads", () => {
  it("[PD22] says who charts and since when they were heard", () => {
    expect(facts()).toMatchObject({ title: "Rosa T. charts this court", offersTakeOver: false });
    expect(facts().sentences[0]).toBe("Last heard 4 s ago.");
    expect(facts({}, true, 140).sentences[0]).toBe("Last heard 2 min ago.");
    const never = leadWords({
      leader: { by: "Rosa T.", silentSeconds: undefined, mayTakeOver: true },
      ...{ led: false, hasSignal: true, unsent: 0 },
    });
    expect(never.sentences[0]).toBe("Not heard yet.");
  });

  it("[PD22] offers to take over only when the server allows it, and says that both names are kept", () => {
    expect(facts().sentences.at(-1)).toContain("not heard for 30 s");
    const allowed = facts({}, true, 31);
    expect(allowed.offersTakeOver).toBe(true);
    expect(allowed.sentences.at(-1)).toContain("Both names stay");
    expect(facts({ hasSignal: false }, true, 31)).toMatchObject({ offersTakeOver: false });
  });

  it("[PD61] tells who handed over to whom, and that their points are kept", () => {
    const handed = leadWords({
      leader: { by: "Rosa T.", silentSeconds: 1, mayTakeOver: false, handedOver: true },
      ...{ led: true, hasSignal: true, unsent: 0 },
    });
    expect(handed.title).toBe("Handed over to Rosa T.");
    expect(handed.sentences).toContain("Your points are kept.");
  });

  it("[PD22] tells who led before that their points are kept, and lets them back when all is sent", () => {
    const lost = facts({ led: true, unsent: 2 }, true);
    expect(lost.title).toBe("Rosa T. leads this match now");
    expect(lost.sentences).toContain("Your points are kept.");
    expect(lost.sentences).toContain("2 unsent stay on this phone.");
    expect(lost.offersTakeOver).toBe(false);
    expect(facts({ led: true }, true).offersTakeOver).toBe(true);
  });

  it("[PD104] tells who comes back at which score the lead was taken, and how many points stand beside it", () => {
    const folded = foldLog(makeLog(pointsOf("AAB")));
    if (!folded.ok) throw new Error(folded.error);
    const takenAt = folded.value.score;
    const back = (points: number, times = 1) =>
      facts({ led: true, back: { takenAt, times, points } }, true).sentences.join(" ");
    expect(back(6)).toContain(
      "Rosa T. took over at 0–0 30–15. 6 points that you charted after that are kept beside the score.",
    );
    expect(back(1)).toContain("1 point that you charted after that is kept beside the score.");
    expect(back(0)).toContain("All points that you charted count in the score.");
    expect(back(6, 2)).toContain("Another phone took over at 0–0 30–15.");
  });

  it("[PD100] offers to chart as second at any time, but not before what a lost lead charted is sent", () => {
    expect(facts().offersSecond).toBe(true);
    expect(facts({ hasSignal: false }).offersSecond).toBe(true);
    expect(facts({ unsent: 3 }).offersSecond).toBe(true);
    expect(facts({ led: true, unsent: 3 }).offersSecond).toBe(false);
    expect(facts({ led: true }).offersSecond).toBe(true);
  });
});
