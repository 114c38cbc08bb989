import { createStream, type Stream } from "./stream.ts";

/** Every kind of fault, with how often it comes up against the others. */
export const FAULT_KINDS = {
  "server ends": 3,
  "server ends at a step": 5,
  "database away": 3,
  "database ends between commit and answer": 3,
  "hints lost": 2,
  "connection cut": 4,
  "no signal": 2,
  "half-open": 3,
  stall: 3,
  "messages twice": 3,
  "messages out of order": 3,
  "batches cut short": 2,
  "answers lost": 4,
  "slow viewer": 2,
  "wall clock jumps": 3,
  "phone dies": 3,
  "phone dies, storage lost": 1,
  "phone's storage is full": 2,
  "a person takes over": 3,
  "a person takes over while the lead has no signal": 3,
  "older backup restored": 2,
  "desk corrects": 3,
} as const;

export type FaultKind = keyof typeof FAULT_KINDS;

/** Who takes part. Matches are numbers into the invented day. */
export interface Cast {
  readonly nodes: number;
  /** The match of each phone. */
  readonly phones: readonly string[];
  /** The match of each court viewer. */
  readonly courtViewers: readonly string[];
  readonly boardViewers: readonly ("staff" | "wall")[];
  /** Who follows the alerts of the day; where nobody does matches have no watches. */
  readonly alertViewers: readonly ("coach" | "director")[];
}

export interface PlannedFault {
  readonly atMs: number;
  readonly kind: FaultKind;
  /** How long it lasts; 0 for what happens at once. */
  readonly forMs: number;
  /** Draws the target among those that the kind can strike; in [0, 1). */
  readonly target: number;
  /** What the kind needs besides: steps, the size of a jump, the age of a backup. */
  readonly amount: number;
}

/** A whole schedule, drawn before anything runs. */
export interface Plan {
  readonly seed: number;
  readonly cast: Cast;
  /** In the order of their times. */
  readonly faults: readonly PlannedFault[];
  /** When all faults end, nothing more is charted and everything has to come right. */
  readonly healMs: number;
}

const DAY_MS = 86_400_000;
const HOUR_MS = 3_600_000;
const JUMPS = [HOUR_MS, -HOUR_MS, DAY_MS, -DAY_MS] as const;
const TICKETS = Object.entries(FAULT_KINDS).flatMap(([kind, weight]) =>
  Array.from({ length: weight }, () => kind as FaultKind),
);

const forMsOf = (kind: FaultKind, stream: Stream): number => {
  switch (kind) {
    case "server ends":
    case "server ends at a step":
      return stream.int(0, 2_000);
    case "stall":
      return stream.int(100, 2_000);
    case "slow viewer":
      return stream.int(2_000, 10_000);
    case "phone dies":
    case "phone dies, storage lost":
      return stream.int(200, 4_000);
    case "connection cut":
    case "wall clock jumps":
    case "older backup restored":
    case "a person takes over":
    case "desk corrects":
      return 0;
    default:
      return stream.int(300, 7_000);
  }
};

const amountOf = (kind: FaultKind, stream: Stream): number => {
  if (kind === "server ends at a step") return stream.int(1, 30);
  if (kind === "desk corrects") return stream.int(2, 6);
  if (kind === "wall clock jumps") return stream.pick(JUMPS);
  return kind === "older backup restored" ? stream.int(200, 8_000) : 0;
};

/** A share of the schedules has watches; it is not drawn, so that the others stay as they were found. */
const hasAlerts = (seed: number): boolean => seed % 4 === 1;

const castOf = (seed: number, stream: Stream): Cast => {
  const matches = ["m1", "m2", "m3"].slice(0, stream.int(1, 3));
  // The first phones have a match each; a further one stands at a court where another leads.
  const phones = Array.from({ length: stream.int(1, 4) }, (_, i) => matches[i] ?? stream.pick(matches));
  return {
    nodes: stream.int(1, 2),
    phones,
    courtViewers: Array.from({ length: stream.int(1, 2) }, () => stream.pick(phones)),
    boardViewers: stream.chance(0.5) ? ["staff"] : ["staff", "wall"],
    alertViewers: hasAlerts(seed) ? ["coach", "director"] : [],
  };
};

/** The schedule of a seed. The same seed always gives the same one. */
export const planOf = (seed: number): Plan => {
  const stream = createStream(seed, "plan");
  const cast = castOf(seed, stream);
  const healMs = stream.int(8_000, 16_000);
  const faults = Array.from({ length: stream.int(3, 9) }, (): PlannedFault => {
    const kind = stream.pick(TICKETS);
    return {
      atMs: stream.int(300, healMs - 200),
      kind,
      forMs: forMsOf(kind, stream),
      target: stream.float(),
      amount: amountOf(kind, stream),
    };
  });
  return { seed, cast, faults: faults.toSorted((a, b) => a.atMs - b.atMs), healMs };
};

/** One line per fault, for people. */
export const describePlan = ({ seed, cast, faults, healMs }: Plan): readonly string[] => [
  `seed ${seed}: ${cast.nodes} node(s), phones on ${cast.phones.join(" ")}, courts ${cast.courtViewers.join(" ")}, boards ${cast.boardViewers.join(" ")}${cast.alertViewers.length > 0 ? `, alerts ${cast.alertViewers.join(" ")}` : ""}; heals at ${healMs} ms`,
  ...faults.map(
    ({ atMs, kind, forMs, amount }) =>
      `  ${String(atMs).padStart(6)} ${kind}${forMs > 0 ? ` for ${forMs} ms` : ""}${amount === 0 ? "" : ` (${amount})`}`,
  ),
];
