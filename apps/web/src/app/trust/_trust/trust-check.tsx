"use client";
import { useCallback, useEffect, useState } from "react";
import form from "../../../form/form.module.css";
import styles from "../trust.module.css";

interface TrustCheckProps {
  /** The https origin of the host that was asked. */
  readonly origin: string;
}

type State = "asking" | "trusted" | "not yet";

const WITHIN_MS = 8_000;

/** Whether this device, left alone, accepts the machine's certificate: a refused one looks like no answer. */
const reaches = async (origin: string): Promise<boolean> => {
  try {
    const signal = AbortSignal.timeout(WITHIN_MS);
    const response = await fetch(`${origin}/trust/check`, { cache: "no-store", credentials: "omit", signal });
    return response.ok;
  } catch {
    // Refused, or too slow: the person is told what to do, and it is asked again.
    return false;
  }
};

/** Says whether this device trusts the machine already, and looks again when the person comes back from the settings. */
export function TrustCheck({ origin }: TrustCheckProps) {
  const [state, setState] = useState<State>("asking");
  const look = useCallback(async () => {
    setState((was) => (was === "trusted" ? was : "asking"));
    setState((await reaches(origin)) ? "trusted" : "not yet");
  }, [origin]);
  useEffect(() => {
    void look();
    const onReturn = () => {
      if (document.visibilityState === "visible") void look();
    };
    document.addEventListener("visibilitychange", onReturn);
    return () => document.removeEventListener("visibilitychange", onReturn);
  }, [look]);
  return (
    <div className={styles.check}>
      <p role="status">{SENTENCES[state]}</p>
      {state === "trusted" ? (
        <div className={styles.ways}>
          <a className={`${form.button} ${form.primary}`} href={`${origin}/pad`}>
            Open the pad
          </a>
          <a className={form.button} href={`${origin}/`}>
            Sign in
          </a>
        </div>
      ) : (
        <button type="button" className={form.button} disabled={state === "asking"} onClick={look}>
          Look again
        </button>
      )}
    </div>
  );
}

const SENTENCES: Record<State, string> = {
  asking: "Looking whether this device trusts the machine …",
  trusted: "This device trusts the machine.",
  "not yet":
    "This device does not trust the machine yet. Follow the steps; this page looks again when you come back.",
};
