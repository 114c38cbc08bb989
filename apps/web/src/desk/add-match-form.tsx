"use client";
import { SIDES } from "@courtloom/core";
import { COACHING_MODES } from "@courtloom/match-log";
import { useMutation } from "@tanstack/react-query";
import { useRouter } from "next/navigation";
import { type FormEvent, useRef, useState } from "react";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { Field } from "../form/field.tsx";
import styles from "../form/form.module.css";
import { ProblemNote } from "../form/problem-note.tsx";
import { SubmitButton } from "../form/submit-button.tsx";
import { COACHING_CAUTION, COACHING_LABELS } from "./coaching-words.ts";
import type { ListedPlayer } from "./name-player.ts";
import { OwnRulesFields } from "./own-rules-fields.tsx";
import { PlayerFields } from "./player-fields.tsx";
import { OWN_RULES, readMatchForm } from "./read-match-form.ts";
import { SurfaceField } from "./surface-field.tsx";

export interface FormatChoice {
  readonly preset: string;
  readonly label: string;
}

interface AddMatchFormProps {
  readonly dayId: string;
  readonly courtId: string;
  readonly courtName: string;
  readonly players: readonly ListedPlayer[];
  readonly formats: readonly FormatChoice[];
}

function FormatFields({ formats }: { readonly formats: readonly FormatChoice[] }) {
  const [format, setFormat] = useState(formats[0]?.preset ?? OWN_RULES);
  return (
    <>
      <Field label="Format">
        {(control) => (
          <select
            {...control}
            name="format"
            value={format}
            onChange={(event) => setFormat(event.target.value)}
          >
            {formats.map(({ preset, label }) => (
              <option key={preset} value={preset}>
                {label}
              </option>
            ))}
            <option value={OWN_RULES}>Own rules</option>
          </select>
        )}
      </Field>
      {format === OWN_RULES ? <OwnRulesFields /> : null}
    </>
  );
}

function ConductFields() {
  return (
    <>
      <Field label="First to serve">
        {(control) => (
          <select {...control} name="firstServer" defaultValue="">
            <option value="">Decided at the toss</option>
            <option value="A">The first named</option>
            <option value="B">The second named</option>
          </select>
        )}
      </Field>
      <Field label="Coaching in this match" hint={COACHING_CAUTION}>
        {(control) => (
          <select {...control} name="coachingMode" defaultValue="notKnown">
            {COACHING_MODES.map((mode) => (
              <option key={mode} value={mode}>
                {COACHING_LABELS[mode]}
              </option>
            ))}
          </select>
        )}
      </Field>
    </>
  );
}

interface SidesFieldsProps {
  readonly players: readonly ListedPlayer[];
  readonly errors: Readonly<Record<string, string>>;
}

function SidesFields({ players, errors }: SidesFieldsProps) {
  const [doubles, setDoubles] = useState(false);
  const places = doubles ? ([1, 2] as const) : ([1] as const);
  return (
    <>
      <label className={styles.check}>
        <input
          type="checkbox"
          name="doubles"
          checked={doubles}
          onChange={(event) => setDoubles(event.target.checked)}
        />{" "}
        Doubles (score only)
      </label>
      {SIDES.map((side) => (
        <fieldset className={styles.group} key={side}>
          <legend>{side === "A" ? "First named" : "Second named"}</legend>
          {places.map((place) => (
            <PlayerFields
              key={place}
              label={place === 1 ? "Player" : "Partner"}
              field={`${side}${place}`}
              players={players}
              ownAtFirst={side === "A"}
              error={errors[`sides.${side}.${place - 1}.name`] ?? errors[`sides.${side}.${place - 1}`]}
            />
          ))}
        </fieldset>
      ))}
    </>
  );
}

/** Adds a match at the end of a court's order of play. */
export function AddMatchForm({ dayId, courtId, courtName, players, formats }: AddMatchFormProps) {
  const trpc = useTRPC();
  const router = useRouter();
  const [round, setRound] = useState(0);
  const details = useRef<HTMLDetailsElement>(null);
  const add = useMutation(
    trpc.match.add.mutationOptions({
      onSuccess: () => {
        setRound(round + 1);
        if (details.current) details.current.open = false;
        router.refresh();
      },
    }),
  );
  const problem = add.error ? readProblem(add.error) : undefined;
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    add.mutate(readMatchForm(new FormData(event.currentTarget), { dayId, courtId }, players));
  };
  return (
    <details ref={details}>
      <summary className={styles.button}>
        Add a match<span className="vh"> on {courtName}</span>
      </summary>
      <form key={round} className={styles.form} onSubmit={submit} method="post">
        <ProblemNote sentence={problem?.sentence} />
        <SidesFields players={players} errors={problem?.fields ?? {}} />
        <FormatFields formats={formats} />
        <SurfaceField open="As on this day" error={problem?.fields.surface} />
        <ConductFields />
        <SubmitButton pending={add.isPending} label="Add this match" pendingLabel="Adding" />
      </form>
    </details>
  );
}
