import { fileURLToPath } from "node:url";
import type { NextConfig } from "next";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** Said by every response, pages and files alike; the policy with a nonce is added per request by `src/proxy.ts`. */
const EVERYWHERE = [
  { key: "X-Content-Type-Options", value: "nosniff" },
  { key: "Referrer-Policy", value: "same-origin" },
  { key: "X-Frame-Options", value: "DENY" },
  { key: "Cross-Origin-Opener-Policy", value: "same-origin" },
  { key: "Cross-Origin-Resource-Policy", value: "same-origin" },
  { key: "Permissions-Policy", value: "camera=(), geolocation=(), microphone=(), payment=(), usb=()" },
  { key: "X-Robots-Tag", value: "noindex, nofollow" },
];

/** Files that hold no page: nothing in them may load or be framed. */
const FILES_POLICY = "default-src 'none'; object-src 'none'; base-uri 'none'; frame-ancestors 'none'";

const config: NextConfig = {
  distDir: process.env.COURTLOOM_DIST || ".next",
  poweredByHeader: false,
  reactStrictMode: true,
  images: { unoptimized: true },
  turbopack: { root: ROOT },
  outputFileTracingRoot: ROOT,
  // Types are checked by `npm run typecheck` over the whole workspace; a build that serves people does not repeat it.
  typescript: { ignoreBuildErrors: true },
  // A page that is not for this person answers 403 with its own screen.
  experimental: { authInterrupts: true },
  serverExternalPackages: ["@node-rs/argon2", "pino", "postgres"],
  headers: async () => [
    { source: "/:path*", headers: EVERYWHERE },
    { source: "/_next/static/:path*", headers: [{ key: "Content-Security-Policy", value: FILES_POLICY }] },
  ],
};

export default config;
