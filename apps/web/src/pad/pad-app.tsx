"use client";

import { useCallback, useEffect, useState } from "react";
import { CourtsRoom } from "./courts/courts-room.tsx";
import { EnterForm } from "./enter-form.tsx";
import { PadDeviceContext } from "./feel/pad-device.ts";
import { useMakeDevice } from "./feel/use-make-device.ts";
import { nameMatch } from "./hand-over/name-match.ts";
import { KeysOnContext } from "./keys/key-hints.ts";
import { MatchChoice } from "./match-choice.tsx";
import { OutboxContext } from "./offline/outbox-context.ts";
import { useShellKept } from "./offline/use-shell-kept.ts";
import styles from "./pad.module.css";
import { type PadSettings, readSettings, saveSettings, USUAL_SETTINGS } from "./pad-settings.ts";
import { chartedLast, placeFor, usePlace } from "./use-place.ts";
import { useTheme } from "./use-theme.ts";
import { useUnsentCount } from "./use-unsent-count.ts";

/** The courtside charting screen, from the code to the last point. */
export const PadApp = () => {
  const [settings, setSettings] = useState<PadSettings>(USUAL_SETTINGS);
  useEffect(() => setSettings(readSettings()), []);
  useTheme(settings.theme);
  const remember = useCallback((next: PadSettings) => {
    setSettings(next);
    saveSettings(next);
  }, []);
  const { place, outbox, go, look } = usePlace();
  const device = useMakeDevice(settings, place.at === "chart");
  const unsent = useUnsentCount(outbox, place.at === "enter");

  useShellKept();
  const known = place.at === "enter" ? place.known : undefined;
  const [last] = known?.matches ?? [];
  const onGoOn = known && last && (() => go({ at: "chart", courtside: known, match: last }));

  if (!outbox || place.at === "opening") return <Opening />;
  switch (place.at) {
    case "enter":
      return (
        <EnterForm
          key={place.code ?? ""}
          name={settings.name}
          code={place.code}
          refused={place.refused}
          unsent={unsent}
          onGoOn={onGoOn}
          onEntered={(courtside, name) => {
            remember({ ...settings, name });
            const handed = courtside.handedOver?.matchId;
            if (handed !== undefined && courtside.staff) nameMatch(handed);
            go(placeFor(courtside, handed ?? chartedLast(courtside, place.known)));
          }}
        />
      );
    case "choose":
      return (
        <MatchChoice
          courtside={place.courtside}
          onChoose={(match) => go({ ...place, at: "chart", match })}
          onRead={() => look(outbox)}
          onEnterCode={() => go({ at: "enter" })}
        />
      );
    case "chart":
      return (
        <PadDeviceContext value={device}>
          <KeysOnContext value={settings.keys}>
            <OutboxContext value={outbox}>
              <CourtsRoom
                key={place.match.matchId}
                first={place}
                outbox={outbox}
                settings={settings}
                onSettings={remember}
                onEnterCode={() => go({ at: "enter", known: { ...place.courtside, matches: [place.match] } })}
                onLeave={() => look(outbox)}
              />
            </OutboxContext>
          </KeysOnContext>
        </PadDeviceContext>
      );
  }
};

const Opening = () => (
  <main className={styles.opening}>
    <h1>Opening the pad…</h1>
  </main>
);
