import type { Metadata, Viewport } from "next";
import { PadApp } from "../../pad/pad-app.tsx";

export const metadata: Metadata = {
  title: "Pad",
  manifest: "/pad.webmanifest",
  appleWebApp: { capable: true, title: "Courtloom", statusBarStyle: "default" },
  icons: { icon: "/icons/pad.svg", apple: "/icons/pad-180.png" },
};

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  viewportFit: "cover",
};

/**
 * The same page for everybody, whatever its address asks for: phones keep it, to open it without a network.
 * Next asks for a default export here.
 */
export default function PadPage() {
  return <PadApp />;
}
