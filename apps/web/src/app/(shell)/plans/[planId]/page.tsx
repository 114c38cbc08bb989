import type { Metadata } from "next";
import Link from "next/link";
import { PlanEditor } from "../../../../plan/plan-editor.tsx";
import { pageApi } from "../../../../server/page-api.ts";
import { orFailurePage } from "../../../../server/page-failure.ts";
import { requireStaff } from "../../../../server/require-staff.ts";
import shell from "../../../../shell/shell.module.css";
import { TopBar } from "../../../../shell/top-bar.tsx";

export const metadata: Metadata = { title: "Plan" };

interface PlanPageProps {
  /** "academy", or the id of an own player. */
  readonly params: Promise<{ readonly planId: string }>;
}

/** One plan to read, change and try. */
export default async function PlanPage({ params }: PlanPageProps) {
  const { planId } = await params;
  const { member, academy } = await requireStaff(`/plans/${planId}`);
  const playerId = planId === "academy" ? null : planId;
  const file = await orFailurePage((await pageApi()).plan.get({ playerId }));
  return (
    <>
      <TopBar title={academy.name} signedIn />
      <main className={shell.page}>
        <div>
          <h1>{file.player ? `Plan for ${file.player.displayName}` : "The academy's plan"}</h1>
          <p className={shell.lead}>
            {file.player
              ? "What this player does otherwise than the academy's plan. A match keeps the plan that held when it was opened."
              : "It holds for every player of the academy. A match keeps the plan that held when it was opened."}
          </p>
          <p className={shell.links}>
            <Link className={shell.link} href="/plans">
              All plans
            </Link>
            {playerId === null ? null : (
              <Link className={shell.link} href={`/players/${playerId}`}>
                Figures
              </Link>
            )}
          </p>
        </div>
        <PlanEditor key={planId} file={file} memberId={member.memberId} timeZone={academy.timeZone} />
      </main>
    </>
  );
}
