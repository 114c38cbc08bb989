import type { Metadata } from "next";
import { pageApi } from "../../../server/page-api.ts";
import { orFailurePage } from "../../../server/page-failure.ts";
import { requireStaff } from "../../../server/require-staff.ts";
import { courtHeading } from "../_court/court-heading.ts";
import { LiveCourt } from "../_court/live-court.tsx";

export const metadata: Metadata = { title: "Court" };

/** One match as it is played, for staff. */
export default async function CourtPage({
  params,
  searchParams,
}: {
  readonly params: Promise<{ readonly matchId: string }>;
  readonly searchParams: Promise<{
    readonly alert?: string | readonly string[];
    readonly point?: string | readonly string[];
  }>;
}) {
  const { matchId } = await params;
  const { alert, point } = await searchParams;
  const { member } = await requireStaff(`/court/${matchId}`);
  const api = await pageApi();
  const match = await orFailurePage(api.match.get({ matchId }));
  const day = match.dayId === null ? undefined : await orFailurePage(api.day.get({ dayId: match.dayId }));
  const lanes = await orFailurePage(api.match.lanes({ matchId }));
  return (
    <LiveCourt
      heading={courtHeading(match, day, lanes)}
      memberId={member.memberId}
      asked={typeof alert === "string" ? alert : null}
      point={typeof point === "string" ? point : null}
    />
  );
}
