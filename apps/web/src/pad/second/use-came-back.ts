import { useMemo } from "react";
import type { PadSnapshot } from "../pad-session.ts";
import { type CameBack, cameBack } from "./came-back.ts";

/** What happened while this phone, which led, was away; undefined while it leads, or never did. */
export const useCameBack = ({ status, record, whole }: PadSnapshot): CameBack | undefined => {
  const lost = status.leader !== undefined;
  const { laneId, epoch } = record;
  return useMemo(
    () => (lost && whole.view ? cameBack(whole.log, whole.view, { laneId, epoch }) : undefined),
    [lost, whole, laneId, epoch],
  );
};
