import type { Side } from "@courtloom/core";

/** How a demo player tends to choose; made up, so that players differ in a way that a board can show. */
export type Temper = "steady" | "impatient" | "brave";

export interface DemoPlayer {
  readonly id: string;
  readonly displayName: string;
  readonly hand: "right" | "left";
  readonly birthYear: number;
  readonly squad: "Ebb" | "Flood";
  /** 1 (strongest) to 5. */
  readonly level: number;
  readonly temper: Temper;
}

export interface DemoStaff {
  readonly name: string;
  readonly role: "director" | "coach";
}

export const DEMO_ACADEMY = {
  name: "Curlew Reach",
  timeZone: "Europe/Lisbon",
  language: "en",
} as const;

export const DEMO_DIRECTOR_EMAIL = "director@curlew-reach.example";

export const DEMO_STAFF: readonly [DemoStaff, ...DemoStaff[]] = [
  { name: "Maren H.", role: "director" },
  { name: "Tobias A.", role: "coach" },
  { name: "Ines Q.", role: "coach" },
];

/** People with a phone at a court. */
export const DEMO_CHARTISTS: readonly string[] = [
  "Ioan P.",
  "Dana H.",
  "Pell O.",
  "Rosa T.",
  "Emeka N.",
  "Lia S.",
  "Jorun B.",
  "Anouk D.",
];

const player = (
  index: number,
  displayName: string,
  hand: "right" | "left",
  level: number,
  temper: Temper,
): DemoPlayer => ({
  id: `player-${String(index).padStart(2, "0")}`,
  displayName,
  hand,
  birthYear: 2008 + (index % 5),
  squad: index % 2 === 0 ? "Flood" : "Ebb",
  level,
  temper,
});

/** Twenty-four invented players of similar ability, in two squads. */
export const DEMO_PLAYERS: readonly DemoPlayer[] = [
  player(1, "Noor V.", "right", 2, "steady"),
  player(2, "Kaito L.", "right", 2, "impatient"),
  player(3, "Anahera P.", "left", 2, "brave"),
  player(4, "Tomasz B.", "right", 3, "steady"),
  player(5, "Idris C.", "right", 2, "steady"),
  player(6, "Leocadia P.", "right", 1, "impatient"),
  player(7, "Yusuf A.", "left", 3, "steady"),
  player(8, "Solveig T.", "right", 2, "brave"),
  player(9, "Mirembe O.", "right", 1, "steady"),
  player(10, "Elsbeth K.", "right", 2, "steady"),
  player(11, "Bastian R.", "right", 3, "impatient"),
  player(12, "Jun D.", "left", 2, "steady"),
  player(13, "Wanjiru M.", "right", 1, "steady"),
  player(14, "Ottoline G.", "right", 3, "brave"),
  player(15, "Signe F.", "right", 2, "steady"),
  player(16, "Halvard E.", "right", 4, "impatient"),
  player(17, "Priya N.", "right", 2, "steady"),
  player(18, "Caetano M.", "left", 3, "brave"),
  player(19, "Zofia W.", "right", 2, "steady"),
  player(20, "Ruairi S.", "right", 4, "steady"),
  player(21, "Amaru Y.", "right", 3, "impatient"),
  player(22, "Freya J.", "right", 1, "brave"),
  player(23, "Nikolai Z.", "right", 4, "steady"),
  player(24, "Thandiwe K.", "left", 2, "steady"),
];

/** Opponents from elsewhere: a short label and a level, no more. */
export const DEMO_VISITORS: readonly {
  readonly id: string;
  readonly displayName: string;
  readonly level: number;
}[] = ["Visitor red", "Visitor slate", "Visitor amber", "Visitor pine", "Visitor chalk", "Visitor rust"].map(
  (displayName, i) => ({ id: `visitor-${i + 1}`, displayName, level: 1 + (i % 4) }),
);

/** Share of points that side A's level is worth against B's: a level is about two points in a hundred. */
export const levelEdge = (levels: Readonly<Record<Side, number>>): number => (levels.B - levels.A) * 0.02;
