/** The two sides of a match. In doubles a side is a pair. */
export const SIDES = ["A", "B"] as const;

export type Side = (typeof SIDES)[number];

/** One value per side; used instead of two-element arrays, whose order has to be remembered. */
export interface ByPlayer<T> {
  readonly A: T;
  readonly B: T;
}

export const otherSide = (side: Side): Side => (side === "A" ? "B" : "A");

export const byPlayer = <T>(make: (side: Side) => T): ByPlayer<T> => ({
  A: make("A"),
  B: make("B"),
});

/** A copy of `values` with the value of `side` replaced. */
export const withSide = <T>(values: ByPlayer<T>, side: Side, value: T): ByPlayer<T> =>
  side === "A" ? { A: value, B: values.B } : { A: values.A, B: value };
