import { signed } from "../bar.ts";
import { ESTIMATOR_WORDS } from "./estimator-words.ts";
import { ESTIMATORS } from "./recover-academy.ts";
import type { RecoveryFigures } from "./run-recovery.ts";

/** What is printed of the estimators, one line each. */
export const recoveryTable = ({ nearness, pointsLostCoverage }: RecoveryFigures): readonly string[] => [
  `${"".padEnd(22)} RMSE  bias, strong  90 % coverage  width`,
  ...ESTIMATORS.map((estimator) => {
    const { rmse, strongBias, coverage, width } = nearness[estimator];
    const interval =
      width === 0
        ? "             –      –"
        : `${coverage.toFixed(1).padStart(14)}${width.toFixed(1).padStart(7)}`;
    return `${ESTIMATOR_WORDS[estimator].padEnd(22)}${rmse.toFixed(1).padStart(5)}${signed(strongBias).padStart(14)} ${interval}`;
  }),
  `Points that go with choices off the plan: 90 % intervals hold the truth for ${pointsLostCoverage.toFixed(1)} % of players.`,
];
