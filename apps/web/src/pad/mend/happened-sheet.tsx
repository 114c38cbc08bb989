import { otherSide, SIDES, type Side } from "@courtloom/core";
import type { EntryBody, Fact, PlaySuspended } from "@courtloom/match-log";
import { useState } from "react";
import { Choices } from "./choices.tsx";
import { ConfirmChange } from "./confirm-change.tsx";
import { firstPointOfGame } from "./first-point-of-game.ts";
import { HEAT_CAUTION } from "./heat-caution.ts";
import styles from "./mend.module.css";
import type { Mending } from "./mend-context.ts";
import { serverSince } from "./mend-order.ts";
import { MendSheet } from "./mend-sheet.tsx";
import { ScoreForm } from "./score-form.tsx";
import { TimeUpForm } from "./time-up-form.tsx";

type Want = (title: string, bodies: readonly EntryBody[]) => void;
interface PartProps {
  readonly mending: Mending;
  readonly want: Want;
}

const PENALTIES = [
  ["warning", "Warning", "Warning"],
  ["point", "Point", "Point penalty"],
  ["game", "Game", "Game penalty"],
] as const;

const PenaltyPart = ({ mending: { names }, want }: PartProps) => (
  <section className={styles.part}>
    <h3>Penalty</h3>
    {SIDES.map((against) => (
      <Choices
        key={against}
        label={`Against ${names[against]}`}
        caption={`Against ${names[against]}`}
        choices={PENALTIES.map(([penalty, label, words]) => ({
          label,
          hint: `${words} against ${names[against]}`,
          onPress: () =>
            want(`${words} against ${names[against]}`, [{ kind: "PenaltyGiven", penalty, against }]),
        }))}
      />
    ))}
  </section>
);

const ServerPart = ({ mending: { view, names }, want }: PartProps) => {
  const { server } = view.score;
  if (!server) return null;
  const to = otherSide(server);
  const first = firstPointOfGame(view);
  const stated = (slip: "players" | "chartist"): Fact => ({ kind: "ServerStated", to, slip });
  return (
    <section className={styles.part}>
      <h3>{names[to]} should be serving</h3>
      <Choices
        label={`${names[to]} should be serving`}
        choices={[
          {
            label: "Players’ slip, points stand",
            onPress: () => want(`Players’ slip: ${names[to]} serves from now`, [stated("players")]),
          },
          {
            label: "My slip, from now",
            onPress: () => want(`My slip: ${names[to]} serves from now`, [stated("chartist")]),
          },
          ...(first
            ? [
                {
                  label: "My slip, since this game began",
                  onPress: () =>
                    want(`My slip: ${names[to]} serves this game`, [serverSince(first, to, "chartist")]),
                },
              ]
            : []),
        ]}
      />
      <p>
        Since an earlier point: choose that point in the list of points. The players’ slip, found in its game:
        the right server goes on at once. Found later, or in a tie-break after an odd number of points: the
        order stays as it is.
      </p>
    </section>
  );
};

/** Whose choices are charted from here: own players, both only where every ball is drawn. */
const SubjectsPart = ({ mending: { view, names }, want }: PartProps) => {
  const own = SIDES.filter((side) => view.opened.players[side].own);
  if (own.length < 2 || view.opened.doubles) return null;
  const choices: readonly (readonly Side[])[] = [...own.map((side) => [side]), own];
  return (
    <section className={styles.part}>
      <h3>Charted from here</h3>
      <Choices
        label="Charted from here"
        choices={choices.map((subjects) => {
          const label = subjects.map((side) => names[side]).join(" and ");
          return {
            label,
            pressed: `${subjects}` === `${view.subjects}`,
            onPress: () => want(`Charted from here: ${label}`, [{ kind: "SubjectsChanged", subjects }]),
          };
        })}
      />
    </section>
  );
};

const REASONS: readonly (readonly [PlaySuspended["reason"], string])[] = [
  ["rain", "Rain"],
  ["light", "Light"],
  ["heat", "Heat"],
  ["medical", "Treatment"],
  ["other", "Another reason"],
];

const SuspendPart = ({ want }: PartProps) => (
  <section className={styles.part}>
    <h3>Play is suspended</h3>
    <Choices
      label="Play is suspended"
      choices={REASONS.map(([reason, words]) => ({
        label: words,
        onPress: () => want(`Suspended: ${words.toLowerCase()}`, [{ kind: "PlaySuspended", reason }]),
      }))}
    />
    <p>{HEAT_CAUTION}</p>
  </section>
);

const EndPart = ({ mending: { view, names }, want }: PartProps) => {
  const ended = (how: Extract<Fact, { kind: "MatchEnded" }>["how"]): Fact => ({ kind: "MatchEnded", how });
  const begun = view.points.length > 0;
  return (
    <section className={styles.part}>
      <h3>The match ends here</h3>
      <Choices
        label="The match ends here"
        choices={[
          ...SIDES.map((side) => ({
            label: `${names[side]} retires`,
            onPress: () => want(`${names[side]} retires`, [ended({ type: "retired", side })]),
          })),
          ...SIDES.map((side) => ({
            label: `${names[side]} is defaulted`,
            onPress: () => want(`${names[side]} is defaulted`, [ended({ type: "defaulted", side })]),
          })),
          ...(begun
            ? []
            : SIDES.map((absent) => ({
                label: `Walkover: ${names[absent]} is not here`,
                onPress: () =>
                  want(`Walkover: ${names[absent]} is not here`, [ended({ type: "walkover", absent })]),
              }))),
          {
            label: begun ? "Stopped for good" : "Not played",
            onPress: () => want(begun ? "Stopped for good" : "Not played", [ended({ type: "unplayed" })]),
          },
        ]}
      />
      <p>Who wins then is for the event’s rules and its officials.</p>
    </section>
  );
};

interface HappenedSheetProps {
  readonly mending: Mending;
  readonly onClose: () => void;
}

/** What happens on court beside points: each is said, its change of the score is shown, and then confirmed. */
export const HappenedSheet = ({ mending, onClose }: HappenedSheetProps) => {
  const [wanted, setWanted] = useState<{ readonly title: string; readonly bodies: readonly EntryBody[] }>();
  const want: Want = (title, bodies) => setWanted({ title, bodies });
  const parts = { mending, want };
  const { view } = mending;
  return (
    <MendSheet title="What happened" onClose={onClose}>
      {wanted && (
        <ConfirmChange mending={mending} {...wanted} onDone={onClose} onBack={() => setWanted(undefined)} />
      )}
      <div className={styles.parts} hidden={wanted !== undefined}>
        {view.score.over && <p>The match is over. Take its end or its last point out first: see Points.</p>}
        {!view.score.over && <PenaltyPart {...parts} />}
        <ServerPart {...parts} />
        {!view.score.over && <ScoreForm mending={mending} onWanted={want} />}
        <SubjectsPart {...parts} />
        {!view.score.over && (
          <>
            <SuspendPart {...parts} />
            <EndPart {...parts} />
            <TimeUpForm onWanted={want} />
          </>
        )}
      </div>
    </MendSheet>
  );
};
