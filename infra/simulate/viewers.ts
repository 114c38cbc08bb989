import type { LoggedEntry } from "@courtloom/match-log";
import type { BoardView } from "@courtloom/protocol";
import {
  type AlertsMirror,
  type BoardMirror,
  type CourtMirror,
  createAlertsMirror,
  createBoardMirror,
  createCourtMirror,
  type MirrorDeps,
} from "@courtloom/sync";
import type { Defect } from "./defect.ts";
import type { DeviceLink } from "./device-link.ts";
import type { Ledger } from "./ledger.ts";
import type { Verdict } from "./verdict.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** A page that follows a court or a day. */
interface Page {
  readonly name: string;
  readonly link: DeviceLink;
  readonly jumpClock: (byMs: number) => void;
}

export interface CourtViewer extends Page {
  readonly matchId: string;
  readonly mirror: CourtMirror;
}

export interface BoardViewer extends Page {
  readonly view: BoardView;
  readonly mirror: BoardMirror;
}

/** A person who follows the alerts of the invented day. */
export interface AlertViewer extends Page {
  readonly mirror: AlertsMirror;
}

export interface ViewerOptions {
  readonly name: string;
  readonly link: DeviceLink;
  readonly time: VirtualTime;
  readonly ledger: Ledger;
  readonly verdict: Verdict;
  readonly defect: Defect | undefined;
}

const open = ({ link, time, defect }: ViewerOptions) => {
  const clock = time.clock();
  const deps: MirrorDeps = { clock, timers: { after: time.after } };
  const channel = link.open();
  return { deps, jumpClock: clock.jump, channel: defect?.viewerChannel?.(channel) ?? channel };
};

export const createCourtViewer = (options: ViewerOptions, matchId: string): CourtViewer => {
  const { name, link, ledger, verdict } = options;
  const { deps, jumpClock, channel } = open(options);
  const mirror = createCourtMirror(channel, matchId, { ...deps, screen: "court" });
  const seen = new WeakSet<LoggedEntry>();
  mirror.subscribe(() => {
    for (const entry of mirror.get().entries) {
      if (seen.has(entry)) continue;
      seen.add(entry);
      if (!ledger.wasCommitted(matchId, entry))
        verdict.broke("I6", `${name} showed ${entry.entry.id} at pos ${entry.pos}, which is not committed`);
    }
  });
  return { name, link, jumpClock, matchId, mirror };
};

/** Watches the invented day. */
export const createBoardViewer = (options: ViewerOptions, view: BoardView): BoardViewer => {
  const { name, link, ledger, verdict } = options;
  const { deps, jumpClock, channel } = open(options);
  const mirror = createBoardMirror(channel, "d1", view, deps);
  mirror.subscribe(() => {
    for (const { tile } of mirror.get().board.courts.values()) {
      if (tile.matchId !== null && tile.pos > ledger.highest(tile.matchId))
        verdict.broke("I6", `${name} showed ${tile.matchId} at pos ${tile.pos}, which is not committed`);
    }
  });
  return { name, link, jumpClock, view, mirror };
};

export const createAlertViewer = (options: ViewerOptions): AlertViewer => {
  const { name, link } = options;
  const { deps, jumpClock, channel } = open(options);
  return { name, link, jumpClock, mirror: createAlertsMirror({ channel, dayId: "d1", deps }) };
};
