import type { MatchView } from "@courtloom/match-log";
import { useEffect, useState } from "react";
import { useSecondCourt } from "./courts/second-court.ts";
import type { CourtsideMatch } from "./courtside.ts";
import { DrawnPoint } from "./drawn-point.tsx";
import { GoBar } from "./go-bar.tsx";
import { useHandOver } from "./hand-over/use-hand-over.ts";
import { usePadKeys } from "./keys/use-pad-keys.ts";
import { Later } from "./later/later.tsx";
import { HAND_OVER_SHEET, KEY_MAP_SHEET, MEND_SHEETS, MENDED_POINT } from "./later/parts.ts";
import type { Mending } from "./mend/mend-context.ts";
import { mendedFrame } from "./mend/mended-frame.ts";
import { SuspendedPanel } from "./mend/suspended-panel.tsx";
import { suspendedSince } from "./mend/suspended-since.ts";
import { type MendSheetName, MoreSheet } from "./more-sheet.tsx";
import { OverPanel } from "./over-panel.tsx";
import type { PadSession, PadSnapshot } from "./pad-session.ts";
import type { PadLevel, PadSettings } from "./pad-settings.ts";
import { isEmptyDraft, type PointFrame } from "./point-draft.ts";
import { sayIdle } from "./say-idle.ts";
import { ScoreLines } from "./score-lines.tsx";
import { ScoreOnly } from "./score-only.tsx";
import { shortNames } from "./short-names.ts";
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
  /** Told whether nothing of the next point is charted yet. */
  readonly onBetween: (isBetween: boolean) => void;
  readonly onSettings: (settings: PadSettings) => void;
  readonly onLeave: () => void;
}

const whoCharted = ({ record, status }: PadSnapshot, laneId: string): string | undefined =>
  laneId === record.laneId
    ? record.chartist
    : status.others.find((other) => other.laneId === laneId)?.chartist;

/** The pad in play: score, court or buttons, and what is asked. */
export const Charting = (props: ChartingProps) => {
  const { session, snapshot, view, frame, match, settings, more, onMore, onSettings, onLeave } = props;
  const names = shortNames(match.names);
  const charting = useCharting({ session, snapshot, view, frame, names });
  const secondsLeft = useSecondsLeft(view.score, view.points.at(-1)?.wallMs);
  const changeLevel = (level: PadLevel) => {
    if (level === snapshot.level) return;
    charting.send({ type: "cleared" });
    void charting.changeLevel(level);
    onSettings({ ...settings, level });
  };
  const onOtherCourt = useSecondCourt()?.other?.go;
  const [mendedId, setMended] = useState<string>();
  const mended = view.points.find(({ id }) => id === mendedId);
  const keyed = mended ? { ...props, settings: { ...settings, keys: false } } : props;
  const keys = usePadKeys({ charting, props: keyed, onLevel: changeLevel, onOtherCourt });
  const { draft, redrawing } = charting.state;
  const isBetween = isEmptyDraft(draft);
  const { onBetween } = props;
  useEffect(() => onBetween(isBetween), [onBetween, isBetween]);
  const { matchId, laneId, second } = snapshot.record;
  const handOver = useHandOver({ matchId, laneId, level: snapshot.level });
  const [handing, setHanding] = useState(false);
  const [mendSheet, setMendSheet] = useState<MendSheetName>();
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
  const mending: Mending = {
    ...{ view, names, epoch: snapshot.epoch, laneId, chart: charting.chart },
    ...(settings.seat === "alwaysNear" ? {} : { endOfA: frame.endOfA }),
    nameOf: (lane) => whoCharted(snapshot, lane),
  };
  const mendedBy = mended && mendedFrame(mended, view, snapshot.level);
  if (mended && mendedBy)
    return (
      <Later
        key={mended.id}
        part={MENDED_POINT}
        props={{ props, mending, viewed: mended, mended: mendedBy, onClose: () => setMended(undefined) }}
      />
    );
  const suspension = suspendedSince(view, Date.now());
  const charts = snapshot.level !== "score" && !view.score.over && !view.suspended;
  return (
    <>
      <ScoreLines
        {...{ names: match.names, own: match.own, score: view.score, before: charting.before }}
        onPoints={() => setMendSheet("points")}
      />
      {view.score.over ? (
        <OverPanel
          {...{ names, score: view.score, unsent: snapshot.status.unsent, onLeave }}
          onTakeBack={view.sealed ? undefined : () => setMendSheet("end")}
        />
      ) : suspension ? (
        <SuspendedPanel
          {...{ suspension, busy: charting.busy }}
          onResume={() => void charting.chart({ kind: "PlayResumed" })}
        />
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
        <DrawnPoint charting={charting} props={props} idle={keys.ball.text ?? idle} keyed={keys.ball.drag} />
      )}
      <GoBar
        canUndo={charting.canUndo}
        busy={charting.busy}
        hand={settings.hand}
        done={charts ? { next: charting.done } : undefined}
        onUndo={charting.undo}
        onDone={charting.onDone}
        onMore={() => onMore(true)}
      />
      {keys.isMapOpen && (
        <Later
          part={KEY_MAP_SHEET}
          props={{ names, seat: frame.seat, draws: keys.draws, onClose: () => keys.showMap(false) }}
        />
      )}
      {more && (
        <MoreSheet
          names={names}
          snapshot={snapshot}
          settings={settings}
          drawing={draft.shots.length > 0}
          act={{
            level: changeLevel,
            showKeys: () => keys.showMap(true),
            subject: (side) => {
              charting.send({ type: "cleared" });
              void charting.chart({ kind: "SubjectsChanged", subjects: [side] });
            },
            settings: onSettings,
            swapEnds: charting.swapEnds,
            mend: setMendSheet,
            replay: () => void charting.replay(),
            leave: onLeave,
            ...(second ? {} : { handOver: () => setHanding(true) }),
          }}
          onClose={() => onMore(false)}
        />
      )}
      {mendSheet && (
        <Later
          part={MEND_SHEETS}
          props={{
            open: mendSheet,
            mending,
            onDraw: (pointId) => {
              setMendSheet(undefined);
              setMended(pointId);
            },
            onClose: () => setMendSheet(undefined),
          }}
        />
      )}
      {handing && (
        <Later
          part={HAND_OVER_SHEET}
          props={{
            call: handOver,
            status: snapshot.status,
            drafting: !isBetween,
            onClose: () => setHanding(false),
          }}
        />
      )}
    </>
  );
};
