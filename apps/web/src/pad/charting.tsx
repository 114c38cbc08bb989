import type { MatchView } from "@courtloom/match-log";
import styles from "./asks.module.css";
import { Chips } from "./chips.tsx";
import { CourtArea } from "./court-area.tsx";
import type { CourtsideMatch } from "./courtside.ts";
import { EndingRow } from "./ending-row.tsx";
import { GoBar } from "./go-bar.tsx";
import { MendRow } from "./mend-row.tsx";
import { MoreSheet } from "./more-sheet.tsx";
import { NotSeenRow } from "./not-seen-row.tsx";
import { OverPanel } from "./over-panel.tsx";
import type { PadSession, PadSnapshot } from "./pad-session.ts";
import type { PadSettings } from "./pad-settings.ts";
import type { PointFrame } from "./point-draft.ts";
import { endingOf } from "./read-draft.ts";
import { sayIdle } from "./say-idle.ts";
import { ScoreLines } from "./score-lines.tsx";
import { ScoreOnly } from "./score-only.tsx";
import { ServeRow } from "./serve-row.tsx";
import { shortNames } from "./short-names.ts";
import { tick } from "./tick.ts";
import { useCharting } from "./use-charting.ts";
import { useSecondsLeft } from "./use-seconds-left.ts";

export interface ChartingProps {
  readonly session: PadSession;
  readonly snapshot: PadSnapshot;
  readonly view: MatchView;
  readonly frame: PointFrame;
  readonly match: CourtsideMatch;
  readonly settings: PadSettings;
  readonly more: boolean;
  readonly onMore: (open: boolean) => void;
  readonly onSettings: (settings: PadSettings) => void;
  readonly onLeave: () => void;
}

type Charting = ReturnType<typeof useCharting>;

/** The row under the chips: mends what is open, else asks the next thing. */
const AskRow = ({
  charting,
  frame,
  names,
}: {
  charting: Charting;
  frame: PointFrame;
  names: CourtsideMatch["names"];
}) => {
  const { state, send } = charting;
  const { draft, opened, redrawing } = state;
  const mended = typeof opened === "number" ? draft.shots[opened] : undefined;
  if (mended)
    return (
      <MendRow
        shot={mended}
        opponent={names[mended.striker === "A" ? "B" : "A"]}
        redrawing={redrawing}
        send={send}
      />
    );
  const last = draft.shots.at(-1);
  if (!last || opened === "serve") return <ServeRow draft={draft} send={send} />;
  return (
    <EndingRow
      striker={names[last.striker]}
      opponent={names[last.striker === "A" ? "B" : "A"]}
      draft={draft}
      ending={endingOf(draft, frame)}
      send={send}
    />
  );
};

const EveryBall = ({
  charting,
  props,
  idle,
}: {
  charting: Charting;
  props: ChartingProps;
  idle: ReturnType<typeof sayIdle>;
}) => {
  const { frame, match } = props;
  const names = shortNames(match.names);
  const { draft, opened, redrawing } = charting.state;
  return (
    <>
      <CourtArea
        names={names}
        frame={frame}
        shots={draft.shots}
        opened={typeof opened === "number" ? opened : undefined}
        redrawing={redrawing}
        idle={idle}
        onDrawn={(drag) => {
          tick();
          charting.send({ type: "drew", ...drag, frame });
        }}
      />
      <div className={styles.asks}>
        {draft.shots.length > 0 ? (
          <Chips names={names} draft={draft} frame={frame} opened={opened} send={charting.send} />
        ) : (
          <NotSeenRow names={names} onPoint={charting.notSeen} />
        )}
        <AskRow charting={charting} frame={frame} names={names} />
      </div>
    </>
  );
};

/** The pad in play: score, court or buttons, and what is asked. */
export const Charting = (props: ChartingProps) => {
  const { session, snapshot, view, frame, match, settings, more, onMore, onSettings, onLeave } = props;
  const names = shortNames(match.names);
  const charting = useCharting({ session, snapshot, view, frame, names });
  const secondsLeft = useSecondsLeft(view.score, view.points.at(-1)?.wallMs);
  const { draft, redrawing } = charting.state;
  const { message } = charting;
  const idle = sayIdle({
    view,
    draft,
    frame,
    names,
    seat: settings.seat,
    secondsLeft,
    opened: charting.state.opened,
    redrawing,
    asksServe: snapshot.level !== "score",
    message,
  });
  return (
    <>
      <ScoreLines names={match.names} own={match.own} score={view.score} before={charting.before} />
      {view.score.over ? (
        <OverPanel names={names} score={view.score} unsent={snapshot.status.unsent} onLeave={onLeave} />
      ) : snapshot.level === "score" ? (
        <ScoreOnly
          names={names}
          endOfA={frame.endOfA}
          idle={idle}
          next={{ A: charting.previewOf("A"), B: charting.previewOf("B") }}
          busy={charting.busy}
          onPoint={charting.notSeen}
        />
      ) : (
        <EveryBall charting={charting} props={props} idle={idle} />
      )}
      <GoBar
        canUndo={charting.canUndo}
        busy={charting.busy}
        done={snapshot.level === "score" || view.score.over ? undefined : { next: charting.done }}
        onUndo={charting.undo}
        onDone={charting.onDone}
        onMore={() => onMore(true)}
      />
      {more && (
        <MoreSheet
          names={names}
          snapshot={snapshot}
          settings={settings}
          drawing={draft.shots.length > 0}
          act={{
            level: (level) => {
              if (level === snapshot.level) return;
              charting.send({ type: "cleared" });
              void charting.chart({ kind: "LevelChanged", level });
              onSettings({ ...settings, level });
            },
            settings: onSettings,
            swapEnds: charting.swapEnds,
            wrongServer: charting.wrongServer,
            replay: () => void charting.replay(),
            leave: onLeave,
          }}
          onClose={() => onMore(false)}
        />
      )}
    </>
  );
};
