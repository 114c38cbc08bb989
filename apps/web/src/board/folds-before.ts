const foldWords = (numbers: readonly number[]): string => {
  const [first, last] = [numbers[0], numbers.at(-1)];
  return numbers.length === 1 ? `Court ${first} not shown` : `Courts ${first} to ${last} not shown`;
};

/**
 * Where a single column folds courts that do not stand out: before the first court of each run, the words that
 * stand for the run. The order stays, so a court is always between the same neighbours. SPEC rule BD43.
 */
export const foldsBefore = (
  order: readonly string[],
  quiet: ReadonlySet<string>,
  numberOf: (courtId: string) => number,
): ReadonlyMap<string, string> => {
  const folds = new Map<string, string>();
  let run: string[] = [];
  const end = () => {
    const [first] = run;
    if (first !== undefined) folds.set(first, foldWords(run.map(numberOf)));
    run = [];
  };
  for (const courtId of order) {
    if (quiet.has(courtId)) run.push(courtId);
    else end();
  }
  end();
  return folds;
};
