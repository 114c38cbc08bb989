import type { Metadata } from "next";
import Link from "next/link";
import { redirect } from "next/navigation";
import { me } from "../../../server/me.ts";
import { pageApi } from "../../../server/page-api.ts";
import { EnterDemoButton } from "../../../setup/enter-demo-button.tsx";
import styles from "../../../shell/shell.module.css";
import { TopBar } from "../../../shell/top-bar.tsx";
import { safePath } from "../../../sign-in/safe-path.ts";
import { SignInForm } from "../../../sign-in/sign-in-form.tsx";

export const metadata: Metadata = { title: "Sign in" };

interface SignInPageProps {
  readonly searchParams: Promise<{ readonly from?: string | string[] }>;
}

/** Where members sign in, and where everybody else finds their own way in. */
export default async function SignInPage({ searchParams }: SignInPageProps) {
  const { from } = await searchParams;
  const next = safePath(typeof from === "string" ? from : undefined);
  if ((await me()).member) redirect(next);
  const { hasAcademy, hasDemo } = await (await pageApi()).setup.status();
  if (!hasAcademy && !hasDemo) redirect("/setup");
  return (
    <>
      <TopBar title="Courtloom" signedIn={false} />
      <main className={`${styles.page} ${styles.narrow}`}>
        <h1>Sign in</h1>
        {hasDemo ? (
          <section className={styles.part} aria-labelledby="demo">
            <h2 id="demo">The demo academy</h2>
            <p>Invented players and matches, to look round in. No account needed.</p>
            <EnterDemoButton />
          </section>
        ) : null}
        <section className={styles.part} aria-labelledby="account">
          <h2 id="account">Directors and coaches</h2>
          {hasAcademy ? (
            <SignInForm next={next} />
          ) : (
            <p>
              No academy of your own is set up here yet. <Link href="/setup">Set up my academy</Link>
            </p>
          )}
        </section>
        <section className={styles.part} aria-labelledby="codes">
          <h2 id="codes">With a code from the desk</h2>
          <Link className={styles.link} href="/pad">
            I have a court code: chart a match
          </Link>
          <Link className={styles.link} href="/wall">
            I have a wall code: show the courts on a screen
          </Link>
        </section>
      </main>
    </>
  );
}
