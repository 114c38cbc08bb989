"use client";
import { type FormEvent, useState } from "react";
import { Field } from "../form/field.tsx";
import styles from "../form/form.module.css";
import { formText } from "../form/form-text.ts";
import { ProblemNote } from "../form/problem-note.tsx";
import { SubmitButton } from "../form/submit-button.tsx";
import { signIn } from "./account-calls.ts";

/** Signs a member in, then goes to `next`, a page of this site. */
export function SignInForm({ next }: { readonly next: string }) {
  const [problem, setProblem] = useState<string>();
  const [pending, setPending] = useState(false);
  const submit = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    setPending(true);
    const refused = await signIn(formText(form, "email"), formText(form, "password"));
    setProblem(refused);
    // A whole load, so that nothing drawn for somebody else stays in the page.
    if (refused === undefined) location.assign(next);
    else setPending(false);
  };
  return (
    <form className={styles.form} onSubmit={submit} method="post">
      <ProblemNote sentence={problem} />
      <Field label="E-mail address">
        {(control) => (
          <input {...control} name="email" type="email" autoComplete="username" required maxLength={254} />
        )}
      </Field>
      <Field label="Password">
        {(control) => (
          <input
            {...control}
            name="password"
            type="password"
            autoComplete="current-password"
            required
            maxLength={256}
          />
        )}
      </Field>
      <SubmitButton pending={pending} label="Sign in" pendingLabel="Signing in" />
    </form>
  );
}
