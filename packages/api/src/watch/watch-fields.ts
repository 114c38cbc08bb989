import { checkWatchSettings, type WatchSettingProblem, watchSettingProblemText } from "@courtloom/decisions";
import { RATES } from "@courtloom/match-log";
import { z } from "zod";

const UNREADABLE = "This cannot be read. Reload the page and choose anew.";

/** Which field a problem stands beside. */
const FIELD_OF = {
  none_watched: "rates",
  too_many_watched: "rates",
  watched_twice: "rates",
  alpha_out_of_range: "alpha",
} as const satisfies Record<WatchSettingProblem, string>;

/** Which rates, how often an alert may be false, quiet or not; the rates in order. Rule WA9. */
export const watchChoiceField = z
  .strictObject(
    {
      rates: z.array(z.enum(RATES, UNREADABLE), UNREADABLE).max(RATES.length * 2, UNREADABLE),
      alpha: z.number("The share of false alarms is missing. Choose one."),
      quiet: z.boolean(UNREADABLE),
    },
    UNREADABLE,
  )
  .transform((choice, context) => {
    const checked = checkWatchSettings(choice);
    if (checked.ok) return { ...choice, rates: [...checked.value.rates] };
    context.addIssue({
      code: "custom",
      path: [FIELD_OF[checked.error]],
      message: watchSettingProblemText(checked.error),
    });
    return z.NEVER;
  });
