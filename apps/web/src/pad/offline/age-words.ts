const HOUR_MIN = 60;
const DAY_MIN = 24 * HOUR_MIN;

/** A span of whole minutes in the largest unit that has at least two of it: 5 min, 119 min, 2 h, 2 days. */
export const ageWords = (minutes: number): string => {
  if (minutes >= 2 * DAY_MIN) return `${Math.floor(minutes / DAY_MIN)} days`;
  return minutes >= 2 * HOUR_MIN ? `${Math.floor(minutes / HOUR_MIN)} h` : `${minutes} min`;
};
