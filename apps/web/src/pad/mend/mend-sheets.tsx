import type { MendSheetName } from "../more-sheet.tsx";
import { HappenedSheet } from "./happened-sheet.tsx";
import type { Mending } from "./mend-context.ts";
import { PointsSheet } from "./points-sheet.tsx";

interface MendSheetsProps {
  readonly open: MendSheetName | undefined;
  readonly mending: Mending;
  readonly onClose: () => void;
}

/** Whichever sheet for putting the match right is open. */
export const MendSheets = ({ open, ...rest }: MendSheetsProps) => {
  if (open === "points") return <PointsSheet {...rest} />;
  return open === "happened" ? <HappenedSheet {...rest} /> : null;
};
