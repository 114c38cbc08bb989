"use client";

import type { Outbox } from "@courtloom/sync";
import { useCallback, useEffect, useState } from "react";
import { readCourtside } from "./ask-courtside.ts";
import type { Courtside, CourtsideMatch, CourtsideRefused } from "./courtside.ts";
import { courtsideOnPhone } from "./courtside-on-phone.ts";
import { EnterForm } from "./enter-form.tsx";
import { MatchChoice } from "./match-choice.tsx";
import { matchToOpen } from "./match-to-open.ts";
import { openOutbox } from "./open-outbox.ts";
import styles from "./pad.module.css";
import { PadMatch } from "./pad-match.tsx";
import { type PadSettings, readSettings, saveSettings, USUAL_SETTINGS } from "./pad-settings.ts";
import { usePadSession } from "./use-pad-session.ts";
import { useTheme } from "./use-theme.ts";
import { useUnsentCount } from "./use-unsent-count.ts";

type Place =
  | { readonly at: "opening" }
  | { readonly at: "enter"; readonly refused?: CourtsideRefused }
  | { readonly at: "choose"; readonly courtside: Courtside }
  | { readonly at: "chart"; readonly courtside: Courtside; readonly match: CourtsideMatch };

interface PadAppProps {
  /** The match that a signed-in member of staff named. */
  readonly matchId: string | undefined;
}

const placeFor = (courtside: Courtside, matchId: string | undefined): Place => {
  const named = courtside.matches.find((match) => match.matchId === matchId);
  const match = named ?? matchToOpen(courtside);
  return match ? { at: "chart", courtside, match } : { at: "choose", courtside };
};

/** The courtside charting screen, from the code to the last point. */
export const PadApp = ({ matchId }: PadAppProps) => {
  const [place, setPlace] = useState<Place>({ at: "opening" });
  const [outbox, setOutbox] = useState<Outbox>();
  const unsent = useUnsentCount(outbox, place.at === "enter");
  const [settings, setSettings] = useState<PadSettings>(USUAL_SETTINGS);
  useTheme(settings.theme);
  const remember = useCallback((next: PadSettings) => {
    setSettings(next);
    saveSettings(next);
  }, []);
  const look = useCallback(
    async (held: Outbox, opensByItself: boolean) => {
      const read = await readCourtside(matchId);
      if (read.ok) {
        setPlace(opensByItself ? placeFor(read.value, matchId) : { at: "choose", courtside: read.value });
        return;
      }
      const known = read.error.code === "unavailable" ? await courtsideOnPhone(held) : undefined;
      setPlace(known ? { at: "choose", courtside: known } : { at: "enter", refused: read.error });
    },
    [matchId],
  );
  useEffect(() => {
    setSettings(readSettings());
    const open = async () => {
      const held = await openOutbox();
      setOutbox(held);
      await look(held, true);
    };
    void open();
  }, [look]);

  if (!outbox || place.at === "opening") return <Opening />;
  switch (place.at) {
    case "enter":
      return (
        <EnterForm
          name={settings.name}
          refused={place.refused}
          unsent={unsent}
          onEntered={(courtside, name) => {
            remember({ ...settings, name });
            setPlace(placeFor(courtside, undefined));
          }}
        />
      );
    case "choose":
      return (
        <MatchChoice
          courtside={place.courtside}
          onChoose={(match) => setPlace({ ...place, at: "chart", match })}
          onRead={() => void look(outbox, false)}
          onEnterCode={() => setPlace({ at: "enter" })}
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
          onEnterCode={() => setPlace({ at: "enter" })}
          onLeave={() => void look(outbox, false)}
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
