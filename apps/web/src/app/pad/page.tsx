import type { Metadata, Viewport } from "next";
import { PadApp } from "../../pad/pad-app.tsx";

export const metadata: Metadata = { title: "Pad" };

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  viewportFit: "cover",
};

interface PadPageProps {
  readonly searchParams: Promise<{ readonly match?: string | readonly string[] }>;
}

/** Next asks for a default export here. */
export default async function PadPage({ searchParams }: PadPageProps) {
  const { match } = await searchParams;
  return <PadApp matchId={typeof match === "string" ? match : undefined} />;
}
