import type { Result } from "@courtloom/core";
import type { ChartingLevel, LoggedEntry, MatchView } from "@courtloom/match-log";
import type { LaneChartist } from "@courtloom/protocol";
import type {
  Appended,
  AppendItem,
  AppendRefused,
  LaneIsOpen,
  LaneOwner,
  LeadLane,
  MatchCard,
  MatchHead,
  MatchRef,
  OpenLaneRefused,
  Unavailable,
} from "../store.ts";
import type { Viewer } from "../viewer.ts";

/** How much of a match's opening a reader may see. */
export type Sight = "full" | "redacted";

export interface OpenLaneAsk {
  readonly card: MatchCard;
  readonly laneId: string;
  readonly chartist: string;
  readonly owner: LaneOwner;
  readonly level: ChartingLevel;
  /** Given when a person asks for the lead: whether they may have it from this lane, as things stand now. */
  readonly mayTakeOver?: (lead: LeadLane) => Promise<Result<boolean, Unavailable>>;
  /** A new lane is kept beside the score. */
  readonly second?: true;
}

export interface Watcher {
  readonly viewer: Viewer;
  readonly sight: Sight;
  /** False once the subscription ended while it was being made. */
  readonly still: () => boolean;
}

export interface LaneBegun extends LaneIsOpen {
  readonly opening: LoggedEntry;
}

export interface RoomPage {
  readonly incarnation: string;
  readonly head: number;
  readonly entries: readonly LoggedEntry[];
  readonly more: boolean;
}

/** The batch was made for another log than the one that is served. */
export interface OtherLog {
  readonly code: "other_incarnation";
  readonly incarnation: string;
}

/**
 * One match on this node. Everything that changes it goes through one queue: the store appends, then the
 * caller is answered, then readers are told. SPEC LV1 to LV5.
 */
export interface MatchRoom {
  readonly ref: MatchRef;
  /** 0 until the log was read. */
  readonly pos: () => number;
  readonly incarnation: () => string | undefined;
  readonly view: () => MatchView | undefined;
  /** What the head last said; undefined until it was read. */
  readonly head: () => MatchHead | undefined;
  readonly takeHead: (head: MatchHead) => void;
  /** Names of those who charted beside the lead. */
  readonly secondChartists: () => readonly string[];
  /** Who charted in each lane that has something in the log, as far as known. */
  readonly chartists: () => readonly LaneChartist[];
  /** Such a name could not be read yet; the next `catchUp` asks again. */
  readonly lacksNames: () => boolean;
  /** Opens the log first if nobody has. A lane that leads is heard by that. */
  readonly openLane: (ask: OpenLaneAsk) => Promise<Result<LaneBegun, OpenLaneRefused | Unavailable>>;
  /** Until when somebody may take the lead that `laneId` handed to them; undefined when it did not. */
  readonly handedUntil: (
    laneId: string,
    to: LaneOwner,
  ) => Promise<Result<{ readonly untilMs: number } | undefined, Unavailable>>;
  /** Whose a lane is, among the lanes opened here since the room began; undefined for others. */
  readonly ownerOf: (laneId: string) => LaneOwner | undefined;
  readonly append: (
    laneId: string,
    incarnation: string,
    items: readonly AppendItem[],
  ) => Promise<Result<Appended, AppendRefused | OtherLog | Unavailable>>;
  /** Reads, and with a viewer subscribes, in one step: what comes after the page is sent to the viewer. */
  readonly read: (after: number, watcher?: Watcher) => Promise<Result<RoomPage, Unavailable>>;
  readonly unwatch: (viewer: Viewer) => void;
  /** Reads what the store has beyond `pos`. Failing, it is asked again by whoever hears of the next head. */
  readonly catchUp: () => Promise<void>;
  /** The store has another log than the one this room read: forget it and read anew. */
  readonly restart: () => Promise<void>;
  /** Called after each change of the fold or of the head. Returns how to stop. */
  readonly onChange: (changed: () => void) => () => void;
  /** Nobody watches and nothing waits. */
  readonly isQuiet: () => boolean;
}
