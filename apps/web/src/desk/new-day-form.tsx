"use client";
import { useMutation } from "@tanstack/react-query";
import { useRouter } from "next/navigation";
import type { FormEvent } from "react";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { Field } from "../form/field.tsx";
import styles from "../form/form.module.css";
import { formText } from "../form/form-text.ts";
import { ProblemNote } from "../form/problem-note.tsx";
import { SubmitButton } from "../form/submit-button.tsx";
import { SurfaceField, surfaceFrom } from "./surface-field.tsx";

/** Makes a day with its courts, then opens its desk. */
export function NewDayForm({ today }: { readonly today: string }) {
  const trpc = useTRPC();
  const router = useRouter();
  const create = useMutation(
    trpc.day.create.mutationOptions({ onSuccess: ({ dayId }) => router.push(`/desk/${dayId}`) }),
  );
  const problem = create.error ? readProblem(create.error) : undefined;
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const surface = surfaceFrom(formText(form, "surface"));
    create.mutate({
      name: formText(form, "name"),
      date: formText(form, "date"),
      courts: Number(formText(form, "courts")),
      ...(surface ? { surface } : {}),
    });
  };
  return (
    <form className={styles.form} onSubmit={submit} method="post">
      <ProblemNote sentence={problem?.sentence} />
      <Field label="Name of the day" hint="Such as Saturday match play." error={problem?.fields.name}>
        {(control) => <input {...control} name="name" required maxLength={80} autoComplete="off" />}
      </Field>
      <div className={styles.row}>
        <Field label="Date" error={problem?.fields.date}>
          {(control) => <input {...control} name="date" type="date" required defaultValue={today} />}
        </Field>
        <Field label="Courts, 1 to 64" error={problem?.fields.courts}>
          {(control) => (
            <input {...control} name="courts" type="number" required min={1} max={64} defaultValue={8} />
          )}
        </Field>
      </div>
      <SurfaceField open="Not known" error={problem?.fields.surface} />
      <SubmitButton
        pending={create.isPending || create.isSuccess}
        label="Make this day"
        pendingLabel="Making it"
      />
    </form>
  );
}
