import type { Ask, Shot } from "@courtloom/match-log";

/** One answer about a ball, by the member of `Shot` that holds it. */
export type Answer = {
  readonly [Asked in Ask]: { readonly ask: Asked; readonly value: NonNullable<Shot[Asked]> };
}[Ask];

/** The shot with an answer, or without it if it had that answer already. Unanswered is absent: unknown. SPEC PD28. */
export const withAnswer = (shot: Shot, { ask, value }: Answer): Shot => {
  const { [ask]: held, ...rest } = shot;
  return held === value ? rest : { ...rest, [ask]: value };
};

/** The shot as if nothing had been asked of it. */
export const withoutAnswers = ({
  ballHeight: _,
  ballTime: __,
  opponent: ___,
  cameIn: ____,
  hesitated: _____,
  ...shot
}: Shot): Shot => shot;
