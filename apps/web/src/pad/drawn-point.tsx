import asksStyles from "./asks.module.css";
import type { ChartingProps } from "./charting.tsx";
import { Chips } from "./chips.tsx";
import { CourtArea } from "./court-area.tsx";
import { askedPlace, asksOfDraft } from "./draft-asks.ts";
import { EndingRow } from "./ending-row.tsx";
import { KeyRow } from "./key-row.tsx";
import { LeftOutRow } from "./left-out-row.tsx";
import { MendRow } from "./mend-row.tsx";
import { NotSeenRow } from "./not-seen-row.tsx";
import { Questions } from "./questions.tsx";
import { endingOf, nextStriker } from "./read-draft.ts";
import type { sayIdle } from "./say-idle.ts";
import { ServeRow } from "./serve-row.tsx";
import { shortNames } from "./short-names.ts";
import type { useCharting } from "./use-charting.ts";
import type { Drag } from "./use-drag.ts";

interface DrawnPointProps {
  readonly charting: ReturnType<typeof useCharting>;
  readonly props: ChartingProps;
  readonly idle: ReturnType<typeof sayIdle>;
  /** A ball that is being drawn by keys. */
  readonly keyed: Drag | undefined;
}

/** What is open for mending, in place of what comes next. */
const MendRows = ({ charting, props }: Pick<DrawnPointProps, "charting" | "props">) => {
  const { state, send } = charting;
  const { draft, opened, redrawing } = state;
  const names = shortNames(props.match.names);
  const shot = typeof opened === "number" ? draft.shots[opened] : undefined;
  if (!shot) return null;
  return (
    <>
      <MendRow
        shot={shot}
        opponent={names[shot.striker === "A" ? "B" : "A"]}
        redrawing={redrawing}
        send={send}
      />
      {opened === draft.shots.length - 1 && <LeftOutRow shot={shot} send={send} />}
    </>
  );
};

/** The rows for what comes next: the serve, or how the point ended. */
const NextRows = ({ charting, props }: Pick<DrawnPointProps, "charting" | "props">) => {
  const { frame, match } = props;
  const { state, send } = charting;
  const { draft, opened } = state;
  const names = shortNames(match.names);
  const last = draft.shots.at(-1);
  const ending = endingOf(draft, frame);
  const { subject } = frame;
  return (
    <>
      {!last || opened === "serve" ? (
        <ServeRow draft={draft} send={send} />
      ) : (
        <EndingRow
          striker={names[last.striker]}
          opponent={names[last.striker === "A" ? "B" : "A"]}
          draft={draft}
          ending={ending}
          send={send}
        />
      )}
      {subject && opened !== "serve" && (
        <KeyRow
          undrawn={last?.striker === (subject === "A" ? "B" : "A") ? undefined : nextStriker(draft, frame)}
          names={names}
          draft={draft}
          ending={ending}
          send={send}
        />
      )}
    </>
  );
};

/** The court, and under it what is asked: at key balls and at every ball. */
export const DrawnPoint = ({ charting, props, idle, keyed }: DrawnPointProps) => {
  const { frame, match, view, snapshot } = props;
  const { send, state } = charting;
  const { draft, opened, redrawing } = state;
  const names = shortNames(match.names);
  const subjects = frame.subject ? [frame.subject] : view.subjects;
  const asks = asksOfDraft(draft, frame, { asks: view.opened.asks, subjects });
  const place = askedPlace(draft, frame, opened, asks);
  const asked = place === undefined ? undefined : draft.shots[place];
  const mends = typeof opened === "number" && draft.shots[opened] !== undefined;
  return (
    <>
      <CourtArea
        names={names}
        frame={frame}
        shots={draft.shots}
        opened={typeof opened === "number" ? opened : undefined}
        redrawing={redrawing}
        idle={idle}
        keyed={keyed}
        onDrawn={charting.drew}
      />
      <div className={asksStyles.asks} data-level={snapshot.level}>
        {draft.shots.length > 0 ? (
          <Chips {...{ names, draft, frame, opened, asks, send }} />
        ) : (
          <NotSeenRow names={names} onPoint={charting.notSeen} />
        )}
        {mends ? (
          <MendRows charting={charting} props={props} />
        ) : (
          <NextRows charting={charting} props={props} />
        )}
        {asked && place !== undefined && !redrawing && (
          <Questions
            shot={asked}
            place={place}
            asks={asks[place] ?? []}
            frame={frame}
            striker={names[asked.striker]}
            opponent={names[asked.striker === "A" ? "B" : "A"]}
            send={send}
          />
        )}
      </div>
    </>
  );
};
