import { type Outbox, unsentLanes } from "@courtloom/sync";
import { useEffect, useState } from "react";

/** How many entries this phone still owes the server, counted when `wanted` becomes true. */
export const useUnsentCount = (outbox: Outbox | undefined, wanted: boolean): number => {
  const [count, setCount] = useState(0);
  useEffect(() => {
    if (!outbox || !wanted) return;
    const read = async () => {
      const lanes = await unsentLanes(outbox);
      setCount(lanes.reduce((sum, { record, entries }) => sum + entries.length - record.acked, 0));
    };
    void read();
  }, [outbox, wanted]);
  return count;
};
