import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { pageApi } from "../../../server/page-api.ts";
import { AcademyForm } from "../../../setup/academy-form.tsx";
import { DemoPart } from "../../../setup/demo-part.tsx";
import { EnterDemoButton } from "../../../setup/enter-demo-button.tsx";
import styles from "../../../shell/shell.module.css";
import { TopBar } from "../../../shell/top-bar.tsx";

export const metadata: Metadata = { title: "Set up" };

/** The first screen of an empty server: an academy of one's own, or the invented one. */
export default async function SetupPage() {
  const { hasAcademy, hasDemo } = await (await pageApi()).setup.status();
  if (hasAcademy) redirect("/sign-in");
  return (
    <>
      <TopBar title="Courtloom" signedIn={false} />
      <main className={`${styles.page} ${styles.narrow}`}>
        <div>
          <h1>See every court of a match day, and the choices made on it</h1>
          <p className={styles.lead}>
            People courtside chart shots on their phones. Coaches see all courts at once and talk afterwards
            with the points in hand.
          </p>
        </div>
        <section className={styles.part} aria-labelledby="demo">
          <h2 id="demo">Look round first</h2>
          <p>
            An invented academy by an estuary: 24 players, two seasons of matches, and a day in progress on
            eight courts. Nothing in it is real.
          </p>
          {hasDemo ? <EnterDemoButton /> : <DemoPart />}
        </section>
        <section className={styles.part} aria-labelledby="own">
          <h2 id="own">Set up my academy</h2>
          <AcademyForm timeZones={Intl.supportedValuesOf("timeZone")} />
        </section>
      </main>
    </>
  );
}
