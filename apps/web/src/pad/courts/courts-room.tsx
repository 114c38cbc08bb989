import type { Outbox } from "@courtloom/sync";
import { Activity, useSyncExternalStore } from "react";
import { readCourtside } from "../ask-courtside.ts";
import pad from "../pad.module.css";
import { PadMatch } from "../pad-match.tsx";
import type { PadSession } from "../pad-session.ts";
import type { PadSettings } from "../pad-settings.ts";
import { usePadSession } from "../use-pad-session.ts";
import { CourtSwitch } from "./court-switch.tsx";
import styles from "./courts.module.css";
import type { ChartedCourt } from "./find-court.ts";
import { type SecondCourt, SecondCourtContext } from "./second-court.ts";
import { type Courts, useCourts } from "./use-courts.ts";

interface CourtsRoomProps {
  readonly first: ChartedCourt;
  readonly outbox: Outbox;
  readonly settings: PadSettings;
  readonly onSettings: (settings: PadSettings) => void;
  readonly onEnterCode: () => void;
  readonly onLeave: () => void;
}

const Opening = () => <p className={pad.opening}>Opening the pad…</p>;

/** The matches on the day's other courts, for staff to take one beside theirs. */
const listElsewhere = async (matchId: string): ReturnType<SecondCourt["list"]> => {
  const read = await readCourtside(matchId);
  return read.ok ? (read.value.elsewhere ?? []) : undefined;
};

/** What is set is set for both courts, but where one sits, which is said of the court in front. */
const settingsAt = (matchId: string, courts: Courts, { settings, onSettings }: CourtsRoomProps) => ({
  settings: { ...settings, seat: courts.seatAt(matchId) ?? settings.seat },
  onSettings: (next: PadSettings) => {
    courts.sit(matchId, next.seat);
    onSettings(next);
  },
});

const OneCourt = ({ courts, ...props }: CourtsRoomProps & { readonly courts: Courts }) => {
  const { first, outbox, settings, onSettings, onEnterCode, onLeave } = props;
  const { handedOver } = first.courtside;
  // Whoever was handed a match goes on at the level at which it was charted.
  const session = usePadSession(first.courtside, first.match, handedOver?.level ?? settings.level, outbox);
  const { matchId } = first.match;
  const second: SecondCourt | undefined = first.courtside.staff
    ? { other: undefined, list: () => listElsewhere(matchId), add: courts.add }
    : undefined;
  return session ? (
    <SecondCourtContext value={second}>
      <PadMatch
        {...{ session, handedOver, settings, onSettings, onEnterCode, onLeave }}
        match={first.match}
      />
    </SecondCourtContext>
  ) : (
    <Opening />
  );
};

interface SideBySideProps {
  readonly session: PadSession;
  readonly other: PadSession;
  readonly at: ChartedCourt;
  readonly courts: Courts;
  readonly props: CourtsRoomProps;
  readonly onLeave: () => void;
}

/** One of two courts, with the way to the other above it. */
const CourtInFront = ({ session, other, at, courts, props, onLeave }: SideBySideProps) => {
  const beside = useSyncExternalStore(other.subscribe, other.get, other.get);
  const second: SecondCourt = {
    other: { courtName: beside.record.courtName, go: courts.change, close: courts.close },
    list: async () => [],
    add: async () => false,
  };
  return (
    <SecondCourtContext value={second}>
      <div className={styles.beside}>
        <CourtSwitch snapshot={beside} onGo={courts.change} />
        <PadMatch
          {...settingsAt(at.match.matchId, courts, props)}
          session={session}
          match={at.match}
          handedOver={at.courtside.handedOver}
          onEnterCode={props.onEnterCode}
          onLeave={onLeave}
        />
      </div>
    </SecondCourtContext>
  );
};

interface TwoCourtsProps extends CourtsRoomProps {
  readonly second: ChartedCourt;
  readonly courts: Courts;
}

/** Both courts stay open and go on sending; the one behind keeps all that was half entered on it. */
const TwoCourts = ({ second, courts, ...props }: TwoCourtsProps) => {
  const { first, outbox, settings, onLeave } = props;
  const [a, b] = [first.match.matchId, second.match.matchId];
  const one = usePadSession(first.courtside, first.match, settings.level, outbox, { except: b });
  const two = usePadSession(second.courtside, second.match, settings.level, outbox, { only: b });
  if (!one || !two) return <Opening />;
  const { isSecondInFront } = courts;
  return (
    <>
      <Activity mode={isSecondInFront ? "hidden" : "visible"}>
        <CourtInFront key={a} session={one} other={two} at={first} {...{ courts, props, onLeave }} />
      </Activity>
      <Activity mode={isSecondInFront ? "visible" : "hidden"}>
        <CourtInFront
          key={b}
          session={two}
          other={one}
          at={second}
          {...{ courts, props }}
          onLeave={courts.close}
        />
      </Activity>
    </>
  );
};

/** The match that is charted, and for staff the second one beside it. SPEC PD74. */
export const CourtsRoom = (props: CourtsRoomProps) => {
  const { first, outbox, settings } = props;
  const courts = useCourts(first, outbox, settings.seat);
  const { second } = courts;
  return second ? (
    <TwoCourts key={second.match.matchId} {...props} second={second} courts={courts} />
  ) : (
    <OneCourt {...props} courts={courts} />
  );
};
