import { compare } from "./compare.ts";
import { foldAgainstParse } from "./fold.ts";

/** Measures each bar against its floor in the same run. Ratios decide the exit code; milliseconds are only printed. */
const outcomes = [foldAgainstParse()].map(compare);
const missed = outcomes.filter((outcome) => !outcome.passed);
console.log(missed.length === 0 ? "bench: every bar kept" : `bench: ${missed.length} missed`);
process.exitCode = missed.length === 0 ? 0 : 1;
