import type { Metadata } from "next";
import Link from "next/link";
import form from "../../../form/form.module.css";
import styles from "../../../plan/plan.module.css";
import { playerPlanWords } from "../../../plan/player-plan-words.ts";
import { sayWhen } from "../../../plan/say-when.ts";
import { StartPlanButton } from "../../../plan/start-plan-button.tsx";
import { pageApi } from "../../../server/page-api.ts";
import { requireStaff } from "../../../server/require-staff.ts";
import shell from "../../../shell/shell.module.css";
import { TopBar } from "../../../shell/top-bar.tsx";

export const metadata: Metadata = { title: "Plans" };

/** The academy's plan, and which players' plans change something of it. */
export default async function PlansPage() {
  const { academy } = await requireStaff("/plans");
  const plans = await (await pageApi()).plan.list();
  return (
    <>
      <TopBar title={academy.name} signedIn />
      <main className={`${shell.page} ${shell.narrow}`}>
        <h1>Plans</h1>
        <section className={shell.part} aria-labelledby="academy">
          <h2 id="academy">The academy's plan</h2>
          {plans.academy ? (
            <>
              {plans.academy.words === "" ? null : (
                <p className={`said ${styles.words}`}>{plans.academy.words}</p>
              )}
              <p>
                Version {plans.academy.version}, {plans.academy.ruleCount}{" "}
                {plans.academy.ruleCount === 1 ? "rule" : "rules"}. Saved by{" "}
                {plans.academy.savedByName ?? "somebody who has left"},{" "}
                {sayWhen(plans.academy.savedMs, academy.timeZone)}.
              </p>
              <Link className={`${form.button} ${form.primary}`} href="/plans/academy">
                Open it
              </Link>
            </>
          ) : (
            <>
              <p>
                No plan yet. The starter plan is an example: begin with it and change it, or begin with an
                empty one.
              </p>
              <div className={styles.buttons}>
                <StartPlanButton />
                <Link className={form.button} href="/plans/academy">
                  Begin with an empty one
                </Link>
              </div>
            </>
          )}
        </section>
        <section className={shell.part} aria-labelledby="players">
          <h2 id="players">Players</h2>
          {plans.players.length === 0 ? (
            <p>No player of the academy yet. They come with the first match at the desk.</p>
          ) : (
            <>
              <p>The academy's plan holds for everybody, with what a player's own plan changes of it.</p>
              <ul className={shell.list}>
                {plans.players.map(({ playerId, displayName, plan }) => (
                  <li key={playerId}>
                    <Link href={`/plans/${playerId}`}>
                      {displayName}
                      <span className={styles.quiet}>{playerPlanWords(plan) ?? "as the academy's"}</span>
                    </Link>
                  </li>
                ))}
              </ul>
            </>
          )}
        </section>
      </main>
    </>
  );
}
