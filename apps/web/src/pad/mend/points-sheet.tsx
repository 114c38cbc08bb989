import { type EntryBody, type TimelineFact, timelineOf } from "@courtloom/match-log";
import { useMemo, useState } from "react";
import { Choices } from "./choices.tsx";
import { ConfirmChange } from "./confirm-change.tsx";
import { factGroups } from "./fact-groups.ts";
import { type FactMend, factMends, MEND_PARTS } from "./fact-mends.ts";
import styles from "./mend.module.css";
import type { Mending } from "./mend-context.ts";
import { factPutIn } from "./mend-order.ts";
import { MendSheet } from "./mend-sheet.tsx";
import { PointsList } from "./points-list.tsx";
import { sayFact } from "./say-fact.ts";
import { ScoreForm } from "./score-form.tsx";

interface Wanted {
  readonly title: string;
  readonly bodies: readonly EntryBody[];
}

interface OpenFactProps {
  readonly row: TimelineFact;
  readonly mending: Mending;
  readonly onDraw: (pointId: string) => void;
  readonly onDone: () => void;
}

/** What can be done about one fact, then what that would change. What was typed stays until it is confirmed. */
const OpenFact = ({ row, mending, onDraw, onDone }: OpenFactProps) => {
  const [wanted, setWanted] = useState<Wanted>();
  const [states, setStates] = useState(false);
  const mends = factMends(row, mending);
  const choose = ({ label, does }: FactMend) => {
    if (does === "draw") onDraw(row.id);
    else if (does === "score") setStates(true);
    else setWanted({ title: label, bodies: does.bodies });
  };
  return (
    <>
      {wanted && <ConfirmChange {...{ mending, onDone, ...wanted }} onBack={() => setWanted(undefined)} />}
      <div className={styles.parts} hidden={wanted !== undefined}>
        {states ? (
          <ScoreForm
            mending={mending}
            before={row.id}
            onWanted={(title, facts) =>
              setWanted({ title, bodies: facts.map((fact) => factPutIn(fact, row.id)) })
            }
          />
        ) : (
          MEND_PARTS.map((part) => {
            const inPart = mends.filter((each) => each.part === part);
            return inPart.length === 0 ? null : (
              <Choices
                key={part}
                label={`${part}: ${sayFact(mending.names, row.fact)}`}
                caption={part}
                choices={inPart.map((each) => ({ label: each.label, onPress: () => choose(each) }))}
              />
            );
          })
        )}
      </div>
    </>
  );
};

interface PointsSheetProps {
  readonly mending: Mending;
  /** Opens a point on the court. */
  readonly onDraw: (pointId: string) => void;
  readonly onClose: () => void;
}

/** Every point and fact of the match, newest first, each to be mended, put before, taken out or put back. */
export const PointsSheet = ({ mending, onDraw, onClose }: PointsSheetProps) => {
  const { view, names, laneId, nameOf } = mending;
  const rows = useMemo(() => timelineOf(view), [view]);
  const [openId, setOpen] = useState<string>();
  const open = rows.find(({ id }) => id === openId);
  return (
    <MendSheet title="Points" onClose={onClose}>
      {view.sealed && <p role="status">This match is closed. Only a director can put something right now.</p>}
      {rows.length === 0 && <p>No points yet. They are listed here once they are charted.</p>}
      <PointsList
        groups={factGroups(view, { names, laneId, nameOf })}
        openId={openId}
        onOpen={(id) => setOpen(id === openId ? undefined : id)}
      >
        {open && (
          <OpenFact
            key={open.id}
            row={open}
            mending={mending}
            onDraw={onDraw}
            onDone={() => setOpen(undefined)}
          />
        )}
      </PointsList>
    </MendSheet>
  );
};
