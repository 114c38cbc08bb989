import { useState } from "react";
import type { ChartingProps } from "../charting.tsx";
import { askedPlace, asksOfDraft } from "../draft-asks.ts";
import { levelsFor } from "../lane-level.ts";
import type { PadLevel } from "../pad-settings.ts";
import { isEmptyDraft } from "../point-draft.ts";
import type { useCharting } from "../use-charting.ts";
import { actionsOf, KEY_MAP, type PressedKey } from "./key-map.ts";
import { pointActions } from "./point-actions.ts";
import { useKeyedBall } from "./use-keyed-ball.ts";
import { type PadActions, useKeys } from "./use-keys.ts";
import { type AskedBall, useQuestion } from "./use-question.ts";

interface PadKeysOptions {
  readonly charting: ReturnType<typeof useCharting>;
  readonly props: ChartingProps;
  readonly onLevel: (level: PadLevel) => void;
  /** Undefined where one court is charted. */
  readonly onOtherCourt: (() => void) | undefined;
}

const askedBall = ({ charting, props }: PadKeysOptions): AskedBall | undefined => {
  const { frame, view, snapshot } = props;
  const { draft, opened, redrawing } = charting.state;
  if (snapshot.level === "score" || redrawing) return undefined;
  const subjects = frame.subject ? [frame.subject] : view.subjects;
  const asks = asksOfDraft(draft, frame, { asks: view.opened.asks, subjects });
  const place = askedPlace(draft, frame, opened, asks);
  const shot = place === undefined ? undefined : draft.shots[place];
  return shot && place !== undefined ? { shot, place, asks: asks[place] ?? [] } : undefined;
};

const levelActions = ({ charting, props, onLevel }: PadKeysOptions): PadActions => {
  const levels = levelsFor(props.view);
  const next = levels[(levels.indexOf(props.snapshot.level) + 1) % levels.length];
  if (next === undefined || next === props.snapshot.level) return {};
  if (isEmptyDraft(charting.state.draft)) return { nextLevel: () => onLevel(next) };
  return { nextLevel: () => charting.say("Finish or undo this point first, then change the level.") };
};

/** What goes at any level while the match is on. */
const matchActions = (options: PadKeysOptions): PadActions => {
  const { charting, props } = options;
  const { settings, snapshot, view } = props;
  const { draft } = charting.state;
  if (view.score.over || view.suspended) return {};
  const drawn = draft.shots.length > 0 && snapshot.level !== "score";
  return {
    ...(drawn ? {} : { pointA: () => charting.notSeenByKey("A"), pointB: () => charting.notSeenByKey("B") }),
    ...(charting.done !== undefined && snapshot.level !== "score" ? { done: charting.onDone } : {}),
    ...(settings.seat === "alwaysNear" ? {} : { swapEnds: () => charting.swapEnds("now") }),
    replay: () => void charting.replay(),
    ...levelActions(options),
  };
};

const sayIdleKey = (pressed: PressedKey): string => {
  const [first] = actionsOf(pressed);
  const label = KEY_MAP.find(({ action }) => action === first)?.label ?? "This key";
  return `${label}: not possible now.`;
};

/** All that a keyboard does on the pad: what is drawn by keys so far, and whether the map of keys is open. */
export const usePadKeys = (options: PadKeysOptions) => {
  const { charting, props, onOtherCourt } = options;
  const { frame, snapshot, view, settings, onMore } = props;
  const [isMapOpen, showMap] = useState(false);
  const draws = snapshot.level !== "score" && !view.score.over && !view.suspended;
  const ball = useKeyedBall(frame.seat, charting.drew);
  const asked = askedBall(options);
  const questions = useQuestion(asked, { frame, send: charting.send, say: charting.say });
  const point = draws ? pointActions({ state: charting.state, frame, send: charting.send }) : {};
  /** Whatever else is done lets go of a ball that was begun by keys; taking back takes back just that. */
  const letGo = (actions: PadActions): PadActions =>
    Object.fromEntries(
      Object.entries(actions).map(([action, act]) => [
        action,
        () => {
          ball.cancel();
          act();
        },
      ]),
    );
  const actions: PadActions = {
    ...letGo({ ...point, ...questions, ...matchActions(options) }),
    ...(charting.canUndo ? { undo: charting.undo } : {}),
    ...(ball.drag ? { undo: ball.cancel, back: ball.cancel } : {}),
    more: () => onMore(true),
    keyMap: () => showMap(true),
    ...(onOtherCourt ? { otherCourt: onOtherCourt } : {}),
  };
  useKeys({
    actions,
    onCell: draws ? ball.press : undefined,
    busy: charting.busy,
    isOn: settings.keys,
    onIdle: (pressed) => charting.say(sayIdleKey(pressed)),
  });
  return { ball, isMapOpen, showMap, draws };
};
