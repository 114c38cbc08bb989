import { describe, expect, it } from "vitest";
import { readContact } from "./contact.ts";
import { defaultKind, type ShotOrder, STROKE_KINDS } from "./default-kind.ts";

const VIEW = { seat: "behind", endOfA: "near", striker: "A" } as const;
const struck = (away: number) => readContact({ right: 0, away }, VIEW, "right");
const BACK = { depthStruck: "behindBaseline" } as const;
const IN = { depthStruck: "insideServiceLine" } as const;

const CASES: readonly (readonly [string, Partial<ShotOrder> & Pick<ShotOrder, "contact">, string])[] = [
  ["first after the serve", { isFirstAfterServe: true, contact: struck(-1200) }, "return"],
  ["first after the serve, struck close in", { isFirstAfterServe: true, contact: struck(-500) }, "return"],
  ["from the baseline", { contact: struck(-1200), incoming: BACK }, "groundstroke"],
  [
    "first visit inside the service line",
    { contact: struck(-500), ownPrevious: BACK, incoming: BACK },
    "groundstroke",
  ],
  ["the same, and came in", { contact: struck(-500), incoming: BACK, cameIn: true }, "approach"],
  ["inside the service line again", { contact: struck(-300), ownPrevious: IN, incoming: BACK }, "volley"],
  ["after an approach", { contact: struck(-300), ownPrevious: { ...BACK, kind: "approach" } }, "volley"],
  ["back from the net", { contact: struck(-1200), ownPrevious: IN, incoming: BACK }, "groundstroke"],
  [
    "struck before it would come down",
    { contact: struck(-300), incoming: { ...BACK, to: { x: 0, y: 9 } } },
    "volley",
  ],
  [
    "met where it came down",
    { contact: struck(-500), incoming: { ...BACK, to: { x: 0, y: 5.5 } } },
    "groundstroke",
  ],
  ["opponent at the net", { contact: struck(-1200), incoming: IN }, "passing"],
  [
    "opponent volleyed from further back",
    { contact: struck(-1200), incoming: { ...BACK, kind: "volley" } },
    "passing",
  ],
  [
    "opponent played a drop shot close in",
    { contact: struck(-700), incoming: { ...IN, kind: "drop" } },
    "groundstroke",
  ],
  ["both at the net", { contact: struck(-300), ownPrevious: IN, incoming: IN }, "volley"],
];

describe("[G15] the kind that place and order suggest", () => {
  it.each(CASES)("%s", (_title, shot, kind) => {
    expect(defaultKind({ isFirstAfterServe: false, ...shot })).toBe(kind);
    expect(STROKE_KINDS).toContain(kind);
  });
});
