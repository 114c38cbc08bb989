import { RATES } from "@courtloom/match-log";
import type { KeptMark, MarkStore } from "@courtloom/sync";
import type { ChoiceStorage } from "../board/choice/choice-store.ts";
import { parseJson } from "./parse-json.ts";

/** More than these were never made between two moments of signal. */
const MOST_KEPT = 200;

const isMark = (value: unknown): value is KeptMark => {
  if (typeof value !== "object" || value === null) return false;
  const { id, key, mark } = value as Readonly<Record<string, unknown>>;
  if (typeof id !== "string" || typeof key !== "object" || typeof mark !== "object") return false;
  return (
    key !== null && mark !== null && "kind" in mark && "rate" in key && RATES.some((r) => r === key.rate)
  );
};

/**
 * Marks that a device keeps for one account and day until the server has them. Another page of the device may keep
 * its own meanwhile, so each step reads again. Kept by the page alone where the device keeps nothing. SPEC rule AS3.
 */
export const createKeptMarks = (
  storage: ChoiceStorage | undefined,
  account: string,
  dayId: string,
): MarkStore => {
  const key = `courtloom-marks-${account}-${dayId}`;
  let unkept: readonly KeptMark[] = [];
  const all = (): readonly KeptMark[] => {
    const read = parseJson(storage?.getItem(key) ?? null);
    return [...(Array.isArray(read) ? read.filter(isMark) : []), ...unkept];
  };
  const write = (marks: readonly KeptMark[]) => {
    unkept = [];
    try {
      if (storage) storage.setItem(key, JSON.stringify(marks.slice(-MOST_KEPT)));
      else unkept = marks;
    } catch {
      // Full or refused: they last as long as the page, which shows them as not sent.
      unkept = marks;
    }
  };
  return {
    all,
    put: (mark) => write([...all().filter(({ id }) => id !== mark.id), mark]),
    remove: (id) => write(all().filter((mark) => mark.id !== id)),
  };
};
