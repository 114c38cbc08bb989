import type { LaneStatus } from "@courtloom/sync";
import { useEffect, useRef, useState } from "react";
import { padLink, spacedCode } from "../../desk/code-links.ts";
import more from "../more.module.css";
import pad from "../pad.module.css";
import styles from "./hand-over.module.css";
import { HandOverQr } from "./hand-over-qr.tsx";
import {
  type HandOverStep,
  handOverStep,
  leftWords,
  noCodeWords,
  stepWords,
  unsentWords,
} from "./hand-over-words.ts";
import type { HandOver, HandOverCall } from "./use-hand-over.ts";

interface HandOverSheetProps {
  readonly call: HandOverCall;
  readonly status: Pick<LaneStatus, "signal" | "unsent">;
  readonly drafting: boolean;
  readonly onClose: () => void;
}

const SECOND_MS = 1_000;

const useLeftMs = (endsAt: number): number => {
  const [now, setNow] = useState(() => performance.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(performance.now()), SECOND_MS);
    return () => clearInterval(timer);
  }, []);
  return Math.max(0, endsAt - now);
};

interface CodeShownProps {
  readonly shown: Extract<HandOver, { at: "code" }>;
  readonly unsent: number;
  readonly drafting: boolean;
  readonly onWithdraw: () => void;
}

const CodeShown = ({ shown, unsent, drafting, onWithdraw }: CodeShownProps) => {
  const leftMs = useLeftMs(shown.endsAt);
  const { code, notWithdrawn } = shown;
  return (
    <>
      <p>The other person types this code on the pad, or scans it, and gives a name.</p>
      <p className={styles.code} data-testid="hand-over-code">
        {spacedCode(code)}
      </p>
      <HandOverQr link={padLink(location.origin, code)} />
      <ul>
        <li>
          Works once. <span data-testid="hand-over-left">{leftWords(leftMs)}</span>.{" "}
          <span data-testid="hand-over-unsent">{unsentWords(unsent)}</span>
        </li>
        <li>Then that phone leads, and this one follows. You can chart on until it does.</li>
        {drafting && <li>Finish this point first: a half-charted point stays on this phone.</li>}
      </ul>
      {notWithdrawn && (
        <p role="alert">Not withdrawn: the server was not reached. The code ends by itself.</p>
      )}
      <button type="button" className={pad.secondary} onClick={onWithdraw}>
        Withdraw the code
      </button>
    </>
  );
};

const Words = ({ words }: { readonly words: readonly string[] }) => (
  <>
    {words.map((text) => (
      <p key={text}>{text}</p>
    ))}
  </>
);

interface NoCodeProps {
  readonly state: Exclude<HandOver, { at: "code" }>;
  readonly step: HandOverStep;
  readonly unsent: number;
  readonly onMake: () => void;
  readonly onHurry: () => void;
}

/** What there is to know before there is a code; each place has one thing to press at most. */
const NoCode = ({ state, step, unsent, onMake, onHurry }: NoCodeProps) => {
  if (step !== "ready") {
    return (
      <>
        <Words words={stepWords(step, unsent)} />
        {step === "sending" && (
          <button type="button" className={pad.secondary} onClick={onHurry}>
            Make the code now
          </button>
        )}
      </>
    );
  }
  if (state.at === "none" || state.at === "asking") return <p aria-busy="true">Asking for a code…</p>;
  const text = state.at === "ended" ? "That code has ended." : noCodeWords(state.why);
  return (
    <>
      <p role="alert">{text}</p>
      <button type="button" className={pad.secondary} onClick={onMake}>
        {state.at === "ended" ? "Make another code" : "Try again"}
      </button>
    </>
  );
};

/** A code and a link for whoever goes on with this match on another phone. SPEC PD55 to PD59. */
export const HandOverSheet = ({ call, status, drafting, onClose }: HandOverSheetProps) => {
  const dialog = useRef<HTMLDialogElement>(null);
  const [hurried, setHurried] = useState(false);
  useEffect(() => dialog.current?.showModal(), []);
  const { state, make, withdraw } = call;
  const { signal, unsent } = status;
  const step = handOverStep({ signal, unsent, drafting, hurried });
  const makes = step === "ready" && state.at === "none";
  useEffect(() => {
    if (makes) make();
  }, [makes, make]);
  const takeBack = async () => {
    if (await withdraw()) onClose();
  };
  return (
    <dialog ref={dialog} className={`${more.more} ${styles.sheet}`} aria-label="Hand over" onClose={onClose}>
      <h2>Hand over</h2>
      {state.at === "code" ? (
        <CodeShown shown={state} unsent={unsent} drafting={drafting} onWithdraw={() => void takeBack()} />
      ) : (
        <NoCode {...{ state, step, unsent }} onMake={make} onHurry={() => setHurried(true)} />
      )}
      <div className={more.stick}>
        <button type="button" className={pad.primary} onClick={() => dialog.current?.close()}>
          Back to the court
        </button>
      </div>
    </dialog>
  );
};
