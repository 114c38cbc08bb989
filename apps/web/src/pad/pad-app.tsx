"use client";

import type { Outbox } from "@courtloom/sync";
import { useCallback, useEffect, useState } from "react";
import type { Courtside } from "./courtside.ts";
import { EnterForm } from "./enter-form.tsx";
import { MatchChoice } from "./match-choice.tsx";
import styles from "./pad.module.css";
import { PadMatch } from "./pad-match.tsx";
import { type PadSettings, readSettings, saveSettings, USUAL_SETTINGS } from "./pad-settings.ts";
import { usePadSession } from "./use-pad-session.ts";
import { placeFor, usePlace } from "./use-place.ts";
import { useTheme } from "./use-theme.ts";
import { useUnsentCount } from "./use-unsent-count.ts";

interface PadAppProps {
  /** The match that a signed-in member of staff named. */
  readonly matchId: string | undefined;
}

/** The courtside charting screen, from the code to the last point. */
export const PadApp = ({ matchId }: PadAppProps) => {
  const [settings, setSettings] = useState<PadSettings>(USUAL_SETTINGS);
  useEffect(() => setSettings(readSettings()), []);
  useTheme(settings.theme);
  const remember = useCallback((next: PadSettings) => {
    setSettings(next);
    saveSettings(next);
  }, []);
  const { place, outbox, go, look } = usePlace(matchId);
  const unsent = useUnsentCount(outbox, place.at === "enter");

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
          onEntered={(courtside, name) => {
            remember({ ...settings, name });
            go(placeFor(courtside, undefined));
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
          onEnterCode={() => go({ at: "enter" })}
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
    <PadMatch {...rest} session={session} />
  ) : (
    <p className={styles.opening}>Opening the pad…</p>
  );
};

const Opening = () => (
  <main className={styles.opening}>
    <h1>Opening the pad…</h1>
  </main>
);
