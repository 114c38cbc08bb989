/** What must hold of every schedule. SPEC SM3. */
export const INVARIANTS = {
  I1: "no acknowledged entry is missing",
  I2: "no entry is there twice",
  I3: "a lane's entries keep their order",
  I4: "positions are dense",
  I5: "each node's fold is the fold of the log",
  I6: "every viewer equals the fold and never showed what was not committed",
  I7: "every outbox drains within 15 s",
  I8: "nothing ends or fails unplanned",
  I9: "no change of the lead is told twice, and no alert twice to one person",
} as const;

export type Invariant = keyof typeof INVARIANTS;

export interface Violation {
  readonly invariant: Invariant;
  readonly says: string;
}

/** Gathers violations; after twenty more of them tell nothing new. */
export interface Verdict {
  readonly broke: (invariant: Invariant, says: string) => void;
  readonly violations: () => readonly Violation[];
}

const MOST = 20;

export const createVerdict = (told: (violation: Violation) => void): Verdict => {
  const violations: Violation[] = [];
  return {
    broke: (invariant, says) => {
      if (violations.length >= MOST) return;
      violations.push({ invariant, says });
      told({ invariant, says });
    },
    violations: () => violations,
  };
};
