import type { Metadata } from "next";
import { LiveBoard } from "../../../board/live-board.tsx";

export const metadata: Metadata = { title: "Board" };

/** The staff board of a day. The live server decides who may see it. */
export default async function BoardPage({
  params,
}: {
  readonly params: Promise<{ readonly dayId: string }>;
}) {
  return <LiveBoard dayId={(await params).dayId} view="staff" />;
}
