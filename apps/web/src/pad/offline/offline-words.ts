import { ageWords } from "./age-words.ts";

const points = (count: number) => (count === 1 ? "1 point" : `${count} points`);

/** The phone's storage is gone: what is here again, and what is not. SPEC PD43. */
export const copyGoneWords = (sentPoints: number): string =>
  `This phone’s own copy is gone. What had been sent is here again: ${points(sentPoints)}; what was unsent then is lost on this phone.`;

/** `aheadMinutes` is negative when the phone's clock is behind. SPEC PD46. */
export const clockWords = (aheadMinutes: number): string => {
  const way = aheadMinutes > 0 ? "ahead" : "behind";
  return `This phone’s clock is ${ageWords(Math.abs(aheadMinutes))} ${way}. Order is kept; times shown may be off.`;
};
