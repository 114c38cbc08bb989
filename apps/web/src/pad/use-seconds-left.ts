import { type ScoreState, secondsAllowed } from "@courtloom/tennis";
import { useEffect, useState } from "react";

/**
 * Seconds left of a rest that began at `sinceWallMs`, by this phone's clock; `undefined` when there is no
 * rest or it is over. For information: nobody is held to it.
 */
export const useSecondsLeft = (score: ScoreState, sinceWallMs: number | undefined): number | undefined => {
  const rests = score.pause === "rest" || score.pause === "set";
  const allowed = rests ? secondsAllowed(score.pause) : null;
  const [now, setNow] = useState(() => Date.now());
  const running = allowed !== null && sinceWallMs !== undefined;
  useEffect(() => {
    if (!running) return;
    setNow(Date.now());
    const timer = setInterval(() => setNow(Date.now()), 1_000);
    return () => clearInterval(timer);
  }, [running]);
  if (!running) return undefined;
  const left = Math.ceil(allowed - (now - sinceWallMs) / 1_000);
  return left > 0 && left <= allowed ? left : undefined;
};
