import { useEffect, useState } from "react";

/** Whole seconds since something is being waited for; 0 while nothing is. */
export const useSecondsWaiting = (isWaiting: boolean): number => {
  const [seconds, setSeconds] = useState(0);
  useEffect(() => {
    if (!isWaiting) return;
    const timer = setInterval(() => setSeconds((before) => before + 1), 1_000);
    return () => {
      clearInterval(timer);
      setSeconds(0);
    };
  }, [isWaiting]);
  return seconds;
};
