"use client";

import type { Outbox } from "@courtloom/sync";
import { useCallback, useEffect, useState } from "react";
import type { Courtside } from "./courtside.ts";
import { EnterForm } from "./enter-form.tsx";
import { MatchChoice } from "./match-choice.tsx";
import { OutboxContext } from "./offline/outbox-context.ts";
import { useShellKept } from "./offline/use-shell-kept.ts";
import styles from "./pad.module.css";
import { PadMatch } from "./pad-match.tsx";
import { type PadSettings, readSettings, saveSettings, USUAL_SETTINGS } from "./pad-settings.ts";
import { usePadSession } from "./use-pad-session.ts";
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
            go(placeFor(courtside, chartedLast(courtside, place.known)));
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
        <ChartedMatch
          key={place.match.matchId}
          courtside={place.courtside}
          match={place.match}
          outbox={outbox}
          settings={settings}
          onSettings={remember}
          onEnterCode={() => go({ at: "enter", known: { ...place.courtside, matches: [place.match] } })}
          onLeave={() => look(outbox)}
        />
      );
  }
};

interface ChartedMatchProps extends Omit<Parameters<typeof PadMatch>[0], "session"> {
  readonly courtside: Courtside;
  readonly outbox: Outbox;
}

const ChartedMatch = ({ courtside, outbox, ...rest }: ChartedMatchProps) => {
  const session = usePadSession(courtside, rest.match, rest.settings.level, outbox);
  return session ? (
    <OutboxContext value={outbox}>
      <PadMatch {...rest} session={session} />
    </OutboxContext>
  ) : (
    <p className={styles.opening}>Opening the pad…</p>
  );
};

const Opening = () => (
  <main className={styles.opening}>
    <h1>Opening the pad…</h1>
  </main>
);
