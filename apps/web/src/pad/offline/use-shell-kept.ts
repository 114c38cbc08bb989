import { useEffect, useState } from "react";
import { keepShellOnPhone } from "./shell.ts";

let keeping: Promise<boolean> | undefined;

/** Once per page; asked again only after a failure. */
const keepOnce = async (): Promise<boolean> => {
  keeping ??= keepShellOnPhone();
  const kept = await keeping;
  if (!kept) keeping = undefined;
  return kept;
};

/** Has this page kept for openings without a network; undefined until it is known whether that succeeded. */
export const useShellKept = (): boolean | undefined => {
  const [kept, setKept] = useState<boolean>();
  useEffect(() => {
    let wanted = true;
    const keep = async () => {
      const answer = await keepOnce();
      if (wanted) setKept(answer);
    };
    void keep();
    return () => {
      wanted = false;
    };
  }, []);
  return kept;
};
