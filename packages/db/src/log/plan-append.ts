import { err, ok, type Result } from "@courtloom/core";
import type { AppendRefused } from "../entry-store.ts";
import type { HashedItem } from "./hash-item.ts";

/** What the store holds about a batch when it decides, under the match's lock. */
export interface LaneSoFar {
  readonly cursor: number;
  /** Hash of item n of this lane, for n up to the cursor. */
  readonly hashOf: (n: number) => string | undefined;
  /** Whether another entry of the match has this id. */
  readonly hasId: (entryId: string) => boolean;
}

/** Which items of a batch are new; the whole batch is refused if one does not fit. Rules ES4 to ES8. */
export function planAppend(
  items: readonly HashedItem[],
  lane: LaneSoFar,
): Result<readonly HashedItem[], AppendRefused> {
  const fresh: HashedItem[] = [];
  const ids = new Set<string>();
  let next = lane.cursor + 1;
  for (const item of items) {
    if (item.n > next) return err({ code: "gap", expect: next });
    if (item.n <= lane.cursor) {
      if (lane.hashOf(item.n) !== item.hash) return err({ code: "identity_conflict", n: item.n });
      continue;
    }
    if (item.n < next) return err({ code: "identity_conflict", n: item.n });
    const id = "entry" in item ? item.entry.id : undefined;
    if (id !== undefined && (ids.has(id) || lane.hasId(id))) {
      return err({ code: "identity_conflict", n: item.n });
    }
    if (id !== undefined) ids.add(id);
    fresh.push(item);
    next += 1;
  }
  return ok(fresh);
}
