import { RATES } from "@courtloom/match-log";
import type { AlertLine } from "@courtloom/protocol";
import { describe, expect, it } from "vitest";
import { alertHref, hrefWords } from "./alert-href.ts";
import { alertSentence, intervalWords, momentWords, runWords } from "./alert-words.ts";
import { askedWords, doneLines, snoozeWords } from "./mark-words.ts";
import { rankAlerts } from "./rank-alerts.ts";
import { RATE_NAMES } from "./rate-names.ts";
import { stateSentence, stateWord } from "./state-words.ts";
import { alertLine } from "./testing/alert-line.ts";
import { isWatched, noAlertsWords } from "./watched-courts.ts";

const ZONE = "Europe/Lisbon";
const at = (clock: string) => Date.parse(`2026-06-20T${clock}:00+01:00`);
const maren = { memberId: "maren", name: "Maren H." };
const dana = { memberId: "dana", name: "Dana H." };

describe("an alert in words", () => {
  it("[AS10] leads with the whole match, then off plan, then since when", () => {
    expect(alertSentence(alertLine())).toBe(
      "10 of 14 line balls missed, usually 3 in 10; 8 were off plan; since 2–1 in the second.",
    );
    const { since: _, ...without } = alertLine({
      match: { x: 5, n: 9, offPlan: 1, low: 0.27, high: 0.81 },
    });
    expect(alertSentence(without)).toBe("5 of 9 line balls missed, usually 3 in 10; 1 was off plan.");
  });

  it("[AS10] has words for every rate, and says of none twice that it was off plan", () => {
    const sentences = RATES.map((rate) => alertSentence(alertLine({ key: { ...alertLine().key, rate } })));
    expect(sentences).toEqual([
      "10 of 14 line balls missed, usually 3 in 10; 8 were off plan; since 2–1 in the second.",
      "10 of 14 groundstrokes down the line, usually 3 in 10; 8 were off plan; since 2–1 in the second.",
      "10 of 14 balls missed cross-court or middle, usually 3 in 10; 8 were off plan; since 2–1 in the second.",
      "10 of 14 line balls off plan, usually 3 in 10; since 2–1 in the second.",
      "10 of 14 agreed moments passed up, usually 3 in 10; since 2–1 in the second.",
    ]);
    expect(Object.keys(RATE_NAMES)).toEqual([...RATES]);
  });

  it("[AS11] names no rate under five, and the academy's level while the past is not the player's own", () => {
    const few = alertLine({ match: { x: 4, n: 4, offPlan: 0, low: 0.51, high: 1 } });
    expect(alertSentence(few)).toBe("4 of 4 line balls missed, too few to say; since 2–1 in the second.");
    expect(alertSentence(few)).not.toMatch(/in 10/);
    expect(alertSentence(alertLine({ source: "academy" }))).toMatch(/missed, academy level 3 in 10; 8 were/);
  });

  it("[AS12] has the interval with its n, and none under five", () => {
    expect(intervalWords(alertLine().match)).toBe("95 % interval 45 to 88 in 100, n\u00a0=\u00a014");
    expect(intervalWords({ x: 4, n: 4, offPlan: 0, low: 0.51, high: 1 })).toBe("n\u00a0=\u00a04");
    expect(runWords(alertLine())).toBe("9 of 12 since then");
    expect(runWords(alertLine({ match: { x: 9, n: 12, offPlan: 0, low: 0.4, high: 0.9 } }))).toBeNull();
    expect(momentWords({ set: 3, games: [0, 5] })).toBe("0–5 in the third");
  });

  it("[AS13] says each state in a word and what it means", () => {
    const said = (more: Partial<AlertLine>) => {
      const line = alertLine({ raisedMs: at("11:20"), ...more });
      return `${stateWord(line, ZONE)}. ${stateSentence(line, ZONE)}`;
    };
    expect(said({})).toBe("Alert. Raised 11:20.");
    expect(said({ state: "easing" })).toBe("Easing. The evidence has faded. Raised 11:20.");
    expect(said({ state: "closed" })).toBe("Closed. It eased, then ends were changed.");
    expect(said({ state: "withdrawn", withdrawn: { atMs: at("11:29"), chartist: "Ioan P." } })).toBe(
      "Withdrawn 11:29. A correction by Ioan P. changed what was charted.",
    );
    expect(said({ state: "withdrawn", withdrawn: { atMs: at("11:29") } })).toBe(
      "Withdrawn 11:29. A correction changed what was charted.",
    );
  });

  it("[AS14] says who did what and when, and until when it is snoozed", () => {
    const marks = {
      seen: [
        { ...maren, atMs: at("11:32") },
        { ...dana, atMs: at("11:40") },
      ],
      assigned: { ...dana, by: { ...maren, atMs: at("11:33") } },
      useful: [
        { ...maren, atMs: at("12:01"), useful: true },
        { ...dana, atMs: at("12:02"), useful: false },
      ],
    };
    expect(doneLines({ marks }, ZONE)).toEqual([
      "Seen by Maren H. 11:32, Dana H. 11:40",
      "Assigned to Dana H. by Maren H. 11:33",
      "Useful, said Maren H. 12:01",
      "Not useful, said Dana H. 12:02",
    ]);
    expect(doneLines({ marks: { seen: [], useful: [] } }, ZONE)).toEqual([]);
    const snoozed = { ...maren, atMs: at("11:34"), reason: "Talked at the change", until: "set" } as const;
    expect(snoozeWords(snoozed, ZONE)).toBe("Snoozed by Maren H. 11:34 until the set ends");
    expect(askedWords({ kind: "assign", memberId: "dana" }, [dana])).toBe("Assigned to Dana H.");
    expect(askedWords({ kind: "assign", memberId: null }, [dana])).toBe("Assigned to nobody");
  });
});

describe("the way to an alert's points", () => {
  it("[AS25] leads to the match alone between two own players, whose page shows no alerts", () => {
    expect(alertHref(alertLine())).toBe("/court/match-1?alert=match-1%2Fnoor%2FlineMissed%2F1%2F1");
    expect(alertHref(alertLine({ bothOwn: true }))).toBe("/court/match-1");
    expect(hrefWords(alertLine({ bothOwn: true }))).toBe("Open the match");
  });
});

describe("the list of alerts", () => {
  it("[AS15] has what stands first, by strength, and what is over last", () => {
    const lines = [
      alertLine({ name: "closed", state: "closed", strength: 0.9 }),
      alertLine({ name: "easing", state: "easing", strength: 0.4 }),
      alertLine({ name: "weaker", strength: 0.7, raisedMs: 9 }),
      alertLine({ name: "withdrawn", state: "withdrawn", strength: 1 }),
      alertLine({ name: "stronger", strength: 0.9, raisedMs: 1 }),
    ];
    expect(rankAlerts(lines).map(({ name }) => name)).toEqual([
      "stronger",
      "weaker",
      "easing",
      "withdrawn",
      "closed",
    ]);
  });

  it("[AS16] says how many courts are watched where there is no alert", () => {
    expect(noAlertsWords(5)).toBe("No alerts. 5 courts are being watched.");
    expect(noAlertsWords(1)).toBe("No alerts. 1 court is being watched.");
    expect(noAlertsWords(0)).toBe("No alerts. No court is being watched.");
    expect(isWatched({ state: "playing", own: null }, "heard")).toBe(false);
  });
});
