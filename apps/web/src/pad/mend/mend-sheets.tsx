import { timelineOf } from "@courtloom/match-log";
import type { MendSheetName } from "../more-sheet.tsx";
import { ConfirmChange } from "./confirm-change.tsx";
import { HappenedSheet } from "./happened-sheet.tsx";
import type { Mending } from "./mend-context.ts";
import { takenOut } from "./mend-fact.ts";
import { MendSheet } from "./mend-sheet.tsx";
import { PointsSheet } from "./points-sheet.tsx";
import { sayFact } from "./say-fact.ts";

interface MendSheetsProps {
  readonly open: MendSheetName;
  readonly mending: Mending;
  /** Opens a point on the court. */
  readonly onDraw: (pointId: string) => void;
  readonly onClose: () => void;
}

/** The end that somebody stated, taken back. */
const EndSheet = ({ mending, onClose }: Pick<MendSheetsProps, "mending" | "onClose">) => {
  const { view, names } = mending;
  const end = timelineOf(view).findLast(
    ({ fact, voided, setAside }) => fact.kind === "MatchEnded" && !voided && setAside === undefined,
  );
  return (
    <MendSheet title="The match’s end" onClose={onClose}>
      {end ? (
        <ConfirmChange
          mending={mending}
          title={`Take it back: ${sayFact(names, end.fact)}`}
          bodies={takenOut(end.id, view)}
          onDone={onClose}
          onBack={onClose}
        />
      ) : (
        <p>Nobody stated an end. Take out the last point instead: see Points.</p>
      )}
    </MendSheet>
  );
};

/** Whichever sheet for putting the match right is open. */
export const MendSheets = ({ open, onDraw, ...rest }: MendSheetsProps) => {
  switch (open) {
    case "points":
      return <PointsSheet {...rest} onDraw={onDraw} />;
    case "happened":
      return <HappenedSheet {...rest} />;
    case "end":
      return <EndSheet {...rest} />;
  }
};
