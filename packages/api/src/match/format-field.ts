import { formatErrorText, type MatchFormat, parseFormat } from "@courtloom/tennis";
import { z } from "zod";
import { FORMAT_PRESETS, isFormatPreset } from "./format-presets.ts";

/** A preset by name, or the rules themselves; comes out as the rules. */
export const formatField = z.unknown().transform((raw, context): MatchFormat => {
  if (typeof raw === "string") {
    if (isFormatPreset(raw)) return FORMAT_PRESETS[raw].format;
    context.addIssue({ code: "custom", message: "Choose one of the formats." });
    return z.NEVER;
  }
  const format = parseFormat(raw);
  if (format.ok) return format.value;
  context.addIssue({ code: "custom", message: formatErrorText(format.error) });
  return z.NEVER;
});
