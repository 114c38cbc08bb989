import { err, ok, type Result } from "@courtloom/core";
import { MAX_BATCH_BYTES, parseEntry, type RefusalCode } from "@courtloom/protocol";
import type { AppendItem } from "../store.ts";

const HIGHEST_N = 1_000_000;

/** The number that an entry says it has, however wrong the rest of it is. */
const saidNumber = (raw: unknown): number | undefined => {
  if (typeof raw !== "object" || raw === null || !Object.hasOwn(raw, "n")) return undefined;
  const { n } = raw as { readonly n: unknown };
  return Number.isInteger(n) && Number(n) >= 1 && Number(n) <= HIGHEST_N ? Number(n) : undefined;
};

/** As text; undefined when it is nested too deeply to be written out. */
const textOf = (raw: unknown): string | undefined => {
  try {
    return JSON.stringify(raw);
  } catch {
    // Only depth can bring this about: what came over the wire has no cycles and no big integers.
    return undefined;
  }
};

const readItem = (raw: unknown, n: number): Result<AppendItem, "bad_shape"> => {
  const said = saidNumber(raw);
  if (said !== undefined && said !== n) return err("bad_shape");
  const parsed = parseEntry(raw);
  if (parsed.ok) return ok({ n, entry: parsed.value });
  return ok({ n, rejected: { code: "bad_shape", raw: textOf(raw) ?? "" } });
};

/**
 * Reads the entries of a batch one by one. A bad one is kept aside under its number, which its neighbours
 * tell when it does not; a batch whose numbers do not follow each other is refused whole. SPEC LV18.
 */
export const readBatch = (raws: readonly unknown[]): Result<readonly AppendItem[], RefusalCode> => {
  const text = textOf(raws);
  if (text === undefined) return err("bad_shape");
  if (Buffer.byteLength(text) > MAX_BATCH_BYTES) return err("too_large");
  const told = raws.findIndex((raw) => saidNumber(raw) !== undefined);
  const first = (saidNumber(raws[told]) ?? 0) - told;
  if (told < 0 || first < 1) return err("bad_shape");
  const items: AppendItem[] = [];
  for (const [i, raw] of raws.entries()) {
    const item = readItem(raw, first + i);
    if (!item.ok) return item;
    items.push(item.value);
  }
  return ok(items);
};
