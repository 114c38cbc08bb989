/** Columns that fill a wide screen evenly: one row up to three courts, two rows up to eight, then four or five wide. */
export const boardColumns = (courts: number): number => {
  if (courts <= 3) return Math.max(1, courts);
  if (courts <= 8) return Math.ceil(courts / 2);
  return courts <= 12 ? 4 : 5;
};

/** More rows than two leave less height: the tiles are drawn denser. */
export const isDense = (courts: number): boolean => courts > 2 * boardColumns(courts);
