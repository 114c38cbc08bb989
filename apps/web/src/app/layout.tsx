import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";
import "@fontsource/encode-sans-semi-condensed/500.css";
import "@fontsource/encode-sans-semi-condensed/600.css";
import "@fontsource/encode-sans-semi-condensed/700.css";
import "@fontsource/encode-sans-semi-condensed/800.css";
import "@fontsource/literata/500-italic.css";
import "../styles/tokens.css";
import "../styles/base.css";
import { readTheme } from "../server/read-theme.ts";

export const metadata: Metadata = {
  title: { default: "Courtloom", template: "%s · Courtloom" },
  description: "Chart shot choices courtside and see every court of a match day.",
  robots: { index: false, follow: false },
  referrer: "same-origin",
  formatDetection: { telephone: false, email: false, address: false },
};

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  viewportFit: "cover",
  colorScheme: "light dark",
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#f6f5f9" },
    { media: "(prefers-color-scheme: dark)", color: "#161221" },
  ],
};

/** The document around every screen. Reading the theme's cookie also makes every page per request, which the nonce needs. */
export default async function RootLayout({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en" data-theme={await readTheme()}>
      <body>{children}</body>
    </html>
  );
}
