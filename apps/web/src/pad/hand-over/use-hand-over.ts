import { useEffect, useRef, useState } from "react";
import { askForCode, withdrawCode } from "./ask-hand-over.ts";
import type { HandOverAsk, HandOverRefusalCode } from "./hand-over-wire.ts";

/** Where the hand-over stands on the phone that leads. */
export type HandOver =
  | { readonly at: "none" }
  | { readonly at: "asking" }
  /** `endsAt` on this page's own clock, ms. `notWithdrawn`: the server was not reached. */
  | { readonly at: "code"; readonly code: string; readonly endsAt: number; readonly notWithdrawn: boolean }
  | { readonly at: "ended" }
  | { readonly at: "refused"; readonly why: HandOverRefusalCode };

/** The code of this phone's lane, kept while the court is charted on with it. */
export const useHandOver = ({ matchId, laneId, level }: HandOverAsk) => {
  const [state, setState] = useState<HandOver>({ at: "none" });
  /** What was asked last: an answer to anything older is not taken. */
  const asked = useRef(0);
  const endsAt = state.at === "code" ? state.endsAt : undefined;
  useEffect(() => {
    if (endsAt === undefined) return;
    const timer = setTimeout(() => setState({ at: "ended" }), Math.max(0, endsAt - performance.now()));
    return () => clearTimeout(timer);
  }, [endsAt]);

  const make = async (): Promise<void> => {
    asked.current += 1;
    const own = asked.current;
    setState({ at: "asking" });
    // From before it was asked for: what the answer took is not shown as time left.
    const from = performance.now();
    const made = await askForCode({ matchId, laneId, level });
    if (own !== asked.current) return;
    if (!made.ok) return setState({ at: "refused", why: made.error });
    const { code, endsInMs } = made.value;
    setState({ at: "code", code, endsAt: from + endsInMs, notWithdrawn: false });
  };
  const withdraw = async (): Promise<boolean> => {
    const withdrawn = await withdrawCode({ matchId, laneId });
    if (withdrawn.ok) setState({ at: "none" });
    else setState((now) => (now.at === "code" ? { ...now, notWithdrawn: true } : now));
    return withdrawn.ok;
  };
  return { state, make: () => void make(), withdraw };
};

export type HandOverCall = ReturnType<typeof useHandOver>;
