"use client";
import { useMutation } from "@tanstack/react-query";
import { type FormEvent, useSyncExternalStore } from "react";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { Field } from "../form/field.tsx";
import styles from "../form/form.module.css";
import { formText } from "../form/form-text.ts";
import { ProblemNote } from "../form/problem-note.tsx";
import { SubmitButton } from "../form/submit-button.tsx";

const never = () => () => undefined;

/** This device's own time zone, once the page runs on it. */
const useDeviceZone = (): string =>
  useSyncExternalStore(
    never,
    () => Intl.DateTimeFormat().resolvedOptions().timeZone,
    () => "",
  );

interface AcademyFormProps {
  /** Zones that the server knows, by name. */
  readonly timeZones: readonly string[];
}

/** The academy and its first director. */
export function AcademyForm({ timeZones }: AcademyFormProps) {
  const trpc = useTRPC();
  const zone = useDeviceZone();
  const create = useMutation(
    trpc.setup.createAcademy.mutationOptions({ onSuccess: () => location.assign("/desk") }),
  );
  const problem = create.error ? readProblem(create.error) : undefined;
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const text = (name: string) => formText(form, name);
    create.mutate({
      name: text("name"),
      timeZone: text("timeZone"),
      directorName: text("directorName"),
      email: text("email"),
      password: text("password"),
    });
  };
  return (
    <form className={styles.form} onSubmit={submit} method="post">
      <ProblemNote sentence={problem?.sentence} />
      <Field label="Name of the academy" error={problem?.fields.name}>
        {(control) => <input {...control} name="name" required maxLength={80} autoComplete="organization" />}
      </Field>
      <Field label="Time zone" hint="Days and clocks follow it." error={problem?.fields.timeZone}>
        {(control) => (
          <select {...control} key={zone} name="timeZone" required defaultValue={zone}>
            <option value="">Choose</option>
            {timeZones.map((name) => (
              <option key={name}>{name}</option>
            ))}
          </select>
        )}
      </Field>
      <Field
        label="Your name"
        hint="You are the first director. Coaches see this name."
        error={problem?.fields.directorName}
      >
        {(control) => <input {...control} name="directorName" required maxLength={60} autoComplete="name" />}
      </Field>
      <Field label="Your e-mail address" hint="You sign in with it." error={problem?.fields.email}>
        {(control) => (
          <input {...control} name="email" type="email" required maxLength={254} autoComplete="username" />
        )}
      </Field>
      <Field
        label="Password"
        hint="At least 8 characters; 15 or more is better. Three unrelated words make a good one."
        error={problem?.fields.password}
      >
        {(control) => (
          <input
            {...control}
            name="password"
            type="password"
            required
            minLength={8}
            maxLength={128}
            autoComplete="new-password"
          />
        )}
      </Field>
      <SubmitButton
        pending={create.isPending || create.isSuccess}
        label="Set up my academy"
        pendingLabel="Setting up"
      />
    </form>
  );
}
