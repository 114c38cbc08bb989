import type { ByPlayer, Side } from "@courtloom/core";
import { type ReactNode, useEffect, useRef } from "react";
import { SecondCourtPart } from "./courts/second-court-part.tsx";
import { HandAndFeel } from "./feel/hand-and-feel.tsx";
import { KeysPart } from "./keys/keys-part.tsx";
import { levelsFor } from "./lane-level.ts";
import more from "./more.module.css";
import { ThisPhone } from "./offline/this-phone.tsx";
import styles from "./pad.module.css";
import type { PadSnapshot } from "./pad-session.ts";
import { PAD_THEMES, type PadLevel, type PadSettings, type PadTheme } from "./pad-settings.ts";
import { BesidePart } from "./second/beside-part.tsx";
import { Segment } from "./segment.tsx";
import { SEAT_CHOICES } from "./shown-ends.ts";
import { SEAT_LABELS } from "./start-sheet.tsx";
import { LEVEL_LABELS } from "./status-bar.tsx";
import { SubjectChoice } from "./subject-choice.tsx";

export type MendSheetName = "points" | "happened" | "end";

export interface MoreActions {
  readonly level: (level: PadLevel) => void;
  /** Key balls: whose balls are charted from now on. */
  readonly subject: (side: Side) => void;
  readonly settings: (settings: PadSettings) => void;
  readonly swapEnds: (from: "now" | "lastChange") => void;
  /** Opens the list of points, or what happens beside them. */
  readonly mend: (sheet: MendSheetName) => void;
  readonly replay: () => void;
  readonly leave: () => void;
  /** Absent where this phone does not lead. */
  readonly handOver?: () => void;
  readonly showKeys: () => void;
}

interface MoreSheetProps {
  readonly names: ByPlayer<string>;
  readonly snapshot: PadSnapshot;
  readonly settings: PadSettings;
  /** A half-drawn point keeps its seat: the drawing belongs to it. */
  readonly drawing: boolean;
  readonly act: MoreActions;
  readonly onClose: () => void;
}

const THEME_LABELS: Readonly<Record<PadTheme, string>> = {
  auto: "As phone",
  light: "Light",
  dark: "Dark",
  sun: "Sun",
};

const Part = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => (
  <section>
    <h3>{title}</h3>
    {children}
  </section>
);

/** Closes the sheet after an action that is done with one touch. */
type Does = (action: () => void) => () => void;

const EndsPart = ({ act, does }: { readonly act: MoreActions; readonly does: Does }) => (
  <Part title="Swap ends">
    <Segment
      label="Swap ends"
      choices={[
        { id: "now", label: "From this point", onPress: does(() => act.swapEnds("now")) },
        { id: "since", label: "Since the last change", onPress: does(() => act.swapEnds("lastChange")) },
      ]}
    />
  </Part>
);

const MendPart = ({ act, does }: { readonly act: MoreActions; readonly does: Does }) => (
  <Part title="Put right">
    <Segment
      label="Put right"
      choices={[
        { id: "points", label: "Points: mend any of them", onPress: does(() => act.mend("points")) },
        {
          id: "happened",
          label: "What happened: penalty, server, score, suspended, ended",
          onPress: does(() => act.mend("happened")),
        },
        { id: "replay", label: "Replay the point: nothing of it counts", onPress: does(act.replay) },
      ]}
    />
  </Part>
);

const SeatPart = ({
  settings,
  drawing,
  act,
  does,
}: Pick<MoreSheetProps, "settings" | "drawing" | "act"> & { readonly does: Does }) => (
  <Part title="Where you sit">
    {drawing ? (
      <p>Finish or undo this point first: its balls are drawn from this seat.</p>
    ) : (
      <Segment
        label="Where you sit"
        choices={SEAT_CHOICES.map((seat) => ({
          id: seat,
          label: SEAT_LABELS[seat],
          pressed: seat === settings.seat,
          onPress: does(() => act.settings({ ...settings, seat })),
        }))}
      />
    )}
  </Part>
);

const ScreenPart = ({ settings, act }: Pick<MoreSheetProps, "settings" | "act">) => (
  <Part title="Screen">
    <Segment
      label="Screen"
      choices={PAD_THEMES.map((theme) => ({
        id: theme,
        label: THEME_LABELS[theme],
        pressed: theme === settings.theme,
        onPress: () => act.settings({ ...settings, theme }),
      }))}
    />
  </Part>
);

const HandOverPart = ({ onHandOver }: { readonly onHandOver: () => void }) => (
  <Part title="Another phone goes on">
    <Segment
      label="Another phone goes on"
      choices={[{ id: "handOver", label: "Hand over", onPress: onHandOver }]}
    />
  </Part>
);

/** Everything that is not needed in a rally, one touch away. */
export const MoreSheet = ({ names, snapshot, settings, drawing, act, onClose }: MoreSheetProps) => {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const does: Does = (action) => () => {
    action();
    onClose();
  };
  return (
    <dialog ref={dialog} className={more.more} aria-label="More" onClose={onClose}>
      <Part title="Level">
        <Segment
          label="Level"
          choices={levelsFor(snapshot.view).map((choice) => ({
            id: choice,
            label: LEVEL_LABELS[choice],
            pressed: choice === snapshot.level,
            onPress: does(() => act.level(choice)),
          }))}
        />
        {snapshot.level === "key" && snapshot.view?.opened.subjects.length === 2 && (
          <SubjectChoice
            names={names}
            chosen={snapshot.view.subjects[0]}
            onChoose={(side) => does(() => act.subject(side))()}
          />
        )}
      </Part>
      <MendPart act={act} does={does} />
      {settings.seat !== "alwaysNear" && <EndsPart act={act} does={does} />}
      <SeatPart settings={settings} drawing={drawing} act={act} does={does} />
      {act.handOver && <HandOverPart onHandOver={does(act.handOver)} />}
      <SecondCourtPart onDone={onClose} />
      <ScreenPart settings={settings} act={act} />
      <HandAndFeel settings={settings} onSettings={act.settings} />
      <KeysPart settings={settings} onSettings={act.settings} onShow={does(act.showKeys)} />
      <BesidePart snapshot={snapshot} onClose={onClose} />
      <ThisPhone snapshot={snapshot} onLeave={does(act.leave)} />
      <div className={more.stick}>
        <button type="button" className={styles.primary} onClick={onClose}>
          Back to the court
        </button>
      </div>
    </dialog>
  );
};
