import pad from "../pad.module.css";
import { copyGoneWords } from "./offline-words.ts";

interface CopyGoneProps {
  /** Points of this match that the server has. */
  readonly sentPoints: number;
  readonly hasSignal: boolean;
  readonly onGoOn: () => void;
  readonly onLeave: () => void;
}

/** This phone leads, and has lost its own copy: it goes on in a new lane when its person says so. SPEC PD43. */
export const CopyGone = ({ sentPoints, hasSignal, onGoOn, onLeave }: CopyGoneProps) => (
  <section className={pad.over} data-testid="copy-gone">
    <h2>Go on from what was sent</h2>
    <p>{copyGoneWords(sentPoints)}</p>
    {hasSignal ? (
      <button type="button" className={pad.primary} onClick={onGoOn} data-testid="go-on">
        Go on charting
      </button>
    ) : (
      <p>No signal. This phone asks again by itself.</p>
    )}
    <button type="button" className={pad.secondary} onClick={onLeave}>
      Another match
    </button>
  </section>
);
