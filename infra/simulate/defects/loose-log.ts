import { err, ok, type Result } from "@courtloom/core";
import type {
  Append,
  AppendDesk,
  Appended,
  AppendRefused,
  EntryStore,
  MatchRef,
  Unavailable,
} from "@courtloom/db";
import { DESK_LANE, type Entry, type LoggedEntry } from "@courtloom/match-log";
import type { Lab } from "../defect.ts";

/** Which rule of the log is not kept. All false or absent: the log is as good as the real one. */
export interface Looseness {
  /** Nothing that the lane has already is passed over. */
  readonly takesAgain?: boolean;
  /** The next pos is read, and the entry is written some time later, without a lock in between. */
  readonly posOutsideLock?: boolean;
  /** A number beyond the cursor's next is taken all the same. */
  readonly takesGaps?: boolean;
  /** The lane's cursor is moved by itself before the entries are written. */
  readonly cursorFirst?: boolean;
  /** Entries are committed one by one, and the cursor at the end. */
  readonly entryByEntry?: boolean;
}

interface LooseMatch {
  log: LoggedEntry[];
  readonly cursors: Map<string, number>;
  readonly epochs: Map<string, number>;
}

const UNAVAILABLE = err({ code: "unavailable" } as const);

/** A log over the real one that keeps the append rules itself, except those that it is told to break. */
export const createLooseLog = (inner: EntryStore, loose: Looseness, lab: Lab): EntryStore => {
  const matches = new Map<string, LooseMatch>();
  const of = ({ academyId, matchId }: MatchRef): LooseMatch => {
    const key = `${academyId}/${matchId}`;
    const match = matches.get(key) ?? { log: [], cursors: new Map(), epochs: new Map() };
    matches.set(key, match);
    return match;
  };
  const place = (match: LooseMatch, laneId: string, entry: Entry, pos: number): LoggedEntry => {
    const logged = { pos, laneId, epoch: match.epochs.get(laneId) ?? 0, entry };
    match.log = [...match.log, logged].toSorted((a, b) => a.pos - b.pos);
    return logged;
  };
  const freshOf = (match: LooseMatch, { laneId, items }: Append): Result<readonly Entry[], AppendRefused> => {
    const entries = items.flatMap((item) => ("entry" in item ? [item.entry] : []));
    if (loose.takesAgain) return ok(entries);
    const cursor = match.cursors.get(laneId) ?? 0;
    const fresh = entries.filter(({ n }) => n > cursor);
    const [first] = fresh;
    if (first && first.n > cursor + 1 && !loose.takesGaps) return err({ code: "gap", expect: cursor + 1 });
    return ok(fresh);
  };
  const append = async (call: Append): Promise<Result<Appended, AppendRefused | Unavailable>> => {
    const match = of(call);
    const { laneId } = call;
    if (!match.cursors.has(laneId)) return err({ code: "unknown_lane" });
    const fresh = freshOf(match, call);
    if (!fresh.ok) return fresh;
    const last = call.items.at(-1)?.n ?? 0;
    const moveCursor = (): void =>
      void match.cursors.set(laneId, Math.max(match.cursors.get(laneId) ?? 0, last));
    let pos = match.log.length;
    if (loose.cursorFirst) moveCursor();
    if (loose.posOutsideLock || loose.cursorFirst) await lab.pause(80);
    if (!lab.isUp()) return UNAVAILABLE;
    const logged: LoggedEntry[] = [];
    for (const entry of fresh.value) {
      if (loose.entryByEntry) await lab.pause(40);
      if (!lab.isUp()) return UNAVAILABLE;
      pos = loose.posOutsideLock ? pos + 1 : match.log.length + 1;
      logged.push(place(match, laneId, entry, pos));
    }
    moveCursor();
    const upTo = match.cursors.get(laneId) ?? 0;
    return ok({ kind: logged.length > 0 ? "appended" : "duplicate", upTo, head: match.log.length, logged });
  };
  const appendDesk: EntryStore["appendDesk"] = async (call: AppendDesk) => {
    const match = of(call);
    const written = await inner.appendDesk(call);
    if (!written.ok) return written;
    const logged = written.value.logged.map(({ entry }) =>
      place(match, DESK_LANE, entry, match.log.length + 1),
    );
    return ok({ ...written.value, head: match.log.length, logged });
  };
  /** What the store wrote by itself, as it does when the lead is taken over. */
  const takeInDesk = async (ref: MatchRef, match: LooseMatch): Promise<void> => {
    const page = await inner.read({ academyId: ref.academyId, matchId: ref.matchId, after: 0, limit: 1_000 });
    if (!page.ok) return;
    const held = new Set(match.log.map(({ entry }) => entry.id));
    for (const { entry } of page.value.entries)
      if (!held.has(entry.id)) place(match, DESK_LANE, entry, match.log.length + 1);
  };
  return {
    ...inner,
    append,
    appendDesk,
    sealMatch: (match) => appendDesk({ ...match, body: { kind: "MatchSealed" } }),
    openMatch: async (open) => {
      const opened = await inner.openMatch(open);
      const match = of(open);
      if (opened.ok && match.log.length === 0) match.log = [opened.value.opening];
      return opened;
    },
    openLane: async (open) => {
      const opened = await inner.openLane(open);
      if (!opened.ok) return opened;
      const match = of(open);
      const cursor = match.cursors.get(open.laneId) ?? 0;
      match.cursors.set(open.laneId, cursor);
      match.epochs.set(open.laneId, opened.value.epoch);
      await takeInDesk(open, match);
      return ok({ ...opened.value, cursor, head: match.log.length });
    },
    read: async ({ after, limit, ...ref }) => {
      const { log } = of(ref);
      return ok({ entries: log.filter(({ pos }) => pos > after).slice(0, limit), head: log.length });
    },
    head: async (ref) => {
      const head = await inner.head(ref);
      return head.ok ? ok({ ...head.value, pos: of(ref).log.length }) : head;
    },
    heads: async () => {
      const changed = await inner.heads();
      if (!changed.ok) return changed;
      return ok({
        heads: changed.value.heads.map((head) => ({ ...head, pos: of(head).log.length })),
        next: "",
      });
    },
  };
};
