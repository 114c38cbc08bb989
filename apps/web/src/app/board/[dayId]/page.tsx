import type { Metadata } from "next";
import { LiveBoard } from "../../../board/live-board.tsx";
import { requireStaff } from "../../../server/require-staff.ts";

export const metadata: Metadata = { title: "Board" };

/** The staff board of a day. */
export default async function BoardPage({
  params,
}: {
  readonly params: Promise<{ readonly dayId: string }>;
}) {
  const { dayId } = await params;
  const { member } = await requireStaff(`/board/${dayId}`);
  return <LiveBoard dayId={dayId} view="staff" account={member.memberId} />;
}
