import { createHash } from "node:crypto";
import { assert } from "@courtloom/core";
import type { Entry } from "@courtloom/match-log";
import type { AppendItem, RejectedItem } from "../entry-store.ts";
import { canonicalJson } from "./canonical-json.ts";

/** An item with what makes it the same item again: SHA-256 of its canonical text, as hex. */
export type HashedItem =
  | { readonly n: number; readonly hash: string; readonly entry: Entry }
  | {
      readonly n: number;
      readonly hash: string;
      readonly rejected: RejectedItem["code"];
      readonly text: string;
    };

/** Rule ES6. */
export function hashItem(item: AppendItem): HashedItem {
  if ("rejected" in item) {
    const text = textOf(item.rejected.raw);
    return { n: item.n, hash: sha256(text), rejected: item.rejected.code, text };
  }
  assert(item.entry.n === item.n, `item ${item.n} carries entry ${item.entry.n}`);
  return { n: item.n, hash: sha256(canonicalJson(item.entry)), entry: item.entry };
}

const sha256 = (text: string): string => createHash("sha256").update(text).digest("hex");

/** Anything may arrive here; what is nested too deeply to be written out is named instead. */
function textOf(raw: unknown): string {
  try {
    return canonicalJson(raw);
  } catch (error) {
    if (error instanceof RangeError) return '"(nested too deeply)"';
    throw error;
  }
}
