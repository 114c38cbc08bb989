import { type ReactNode, useMemo, useState } from "react";
import type { CourtsideMatch } from "../courtside.ts";
import { Later } from "../later/later.tsx";
import { MERGE_SHEET } from "../later/parts.ts";
import type { PadSession, PadSnapshot } from "../pad-session.ts";
import { BesideBar } from "./beside-bar.tsx";
import { BesideContext } from "./beside-context.ts";
import { countToTell, lanesToCompare, rowsToJudge } from "./lanes-to-compare.ts";
import { LeadWishContext } from "./lead-wish-context.ts";
import { scoreWith } from "./merge-preview.ts";

interface BesideScoreProps {
  readonly session: PadSession;
  readonly snapshot: PadSnapshot;
  readonly match: CourtsideMatch;
  readonly children: ReactNode;
}

/** What other lanes charted, for the phone that leads: a bar when something differs, and the sheet to merge it. */
export const BesideScore = ({ session, snapshot, match, children }: BesideScoreProps) => {
  const { record, status, whole, epoch } = snapshot;
  const [open, setOpen] = useState(false);
  const { log, view } = whole;
  const leads = !status.second && !status.leader && record.epoch > 0;
  const comparisons = useMemo(() => (leads && view ? lanesToCompare(log, view) : []), [leads, log, view]);
  const nameOf = (laneId: string): string | undefined =>
    laneId === record.laneId
      ? record.chartist
      : status.others.find((lane) => lane.laneId === laneId)?.chartist;
  const count = comparisons.reduce((sum, comparison) => sum + rowsToJudge(comparison).length, 0);
  const tell = comparisons.filter((comparison) => countToTell(comparison) > 0);
  const names = [...new Set(tell.flatMap(({ laneId }) => nameOf(laneId) ?? []))];
  return (
    <LeadWishContext value={session.takeOver}>
      <BesideContext value={comparisons.length > 0 ? { count, open: () => setOpen(true) } : undefined}>
        <BesideBar
          count={tell.reduce((sum, comparison) => sum + countToTell(comparison), 0)}
          names={names}
          onOpen={() => setOpen(true)}
        />
        {children}
        {open && view && (
          <Later
            part={MERGE_SHEET}
            props={{
              comparisons,
              names: match.names,
              leadName: record.chartist,
              nameOf,
              score: view.score,
              act: { preview: (body) => scoreWith(view, body, epoch), merge: session.chart },
              onClose: () => setOpen(false),
            }}
          />
        )}
      </BesideContext>
    </LeadWishContext>
  );
};
