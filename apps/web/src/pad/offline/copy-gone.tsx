import type { MatchView } from "@courtloom/match-log";
import type { CourtsideMatch } from "../courtside.ts";
import pad from "../pad.module.css";
import { ScoreLines } from "../score-lines.tsx";
import { copyGoneWords } from "./offline-words.ts";

interface CopyGoneProps {
  readonly match: CourtsideMatch;
  readonly view: MatchView | undefined;
  /** Points of this match that the server has. */
  readonly sentPoints: number;
  readonly hasSignal: boolean;
  readonly onGoOn: () => void;
  readonly onLeave: () => void;
}

/** This phone leads, and has lost its own copy: it goes on in a new lane when its person says so. SPEC PD43. */
export const CopyGone = ({ match, view, sentPoints, hasSignal, onGoOn, onLeave }: CopyGoneProps) => (
  <>
    {view && <ScoreLines names={match.names} own={match.own} score={view.score} before={undefined} />}
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
  </>
);
