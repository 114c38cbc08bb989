import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { nextProgram } from "../start/build-web.ts";
import { runScript } from "../start/run-script.ts";

const ROOT = new URL("../..", import.meta.url).pathname;
const FOLDER = join(ROOT, ".tmp", "bench", "empty-page");

/** One page with one client component that does nothing, under the very configuration of the product's screens. */
const SOURCES: Readonly<Record<string, string>> = {
  "package.json": '{ "name": "empty-page", "private": true, "type": "module" }\n',
  "next.config.mjs":
    'import config from "../../../apps/web/next.config.ts";\nexport default { ...config, distDir: ".next" };\n',
  "app/layout.jsx":
    'export default function Layout({ children }) {\n  return <html lang="en"><body>{children}</body></html>;\n}\n',
  "app/empty.jsx": '"use client";\n\nexport const Empty = () => <p data-testid="empty">Nothing.</p>;\n',
  "app/page.jsx":
    'import { Empty } from "./empty.jsx";\n\nexport default function Page() {\n  return <Empty />;\n}\n',
};

const webRequire = createRequire(join(ROOT, "apps", "web", "package.json"));
const versionOf = (name: string): string =>
  (webRequire(`${name}/package.json`) as { readonly version: string }).version;

/** Another framework, configuration or page makes another build. */
const buildKey = (): string => {
  const hash = createHash("sha256");
  for (const name of ["next", "react", "react-dom"]) hash.update(`${name} ${versionOf(name)}\n`);
  hash.update(readFileSync(join(ROOT, "apps", "web", "next.config.ts")));
  hash.update(JSON.stringify(SOURCES));
  return hash.digest("hex");
};

const isBuilt = (key: string): boolean => {
  const stamp = join(FOLDER, "built");
  return existsSync(stamp) && readFileSync(stamp, "utf8") === key;
};

/** Builds the empty page unless this one is built already; answers its folder, which git does not see. */
export const buildEmptyPage = async (): Promise<string> => {
  const key = buildKey();
  if (isBuilt(key)) return FOLDER;
  rmSync(FOLDER, { recursive: true, force: true });
  mkdirSync(join(FOLDER, "app"), { recursive: true });
  for (const [path, text] of Object.entries(SOURCES)) writeFileSync(join(FOLDER, path), text);
  const end = await runScript([nextProgram(ROOT), "build"], FOLDER, {
    ...inherited(),
    NODE_ENV: "production",
    NEXT_TELEMETRY_DISABLED: "1",
  });
  if (end.exitCode !== 0) throw new Error(`The empty page could not be built:\n${end.output}`);
  writeFileSync(join(FOLDER, "built"), key);
  return FOLDER;
};

/** This process's settings, without those that name the product's own build. */
const inherited = (): Record<string, string> =>
  Object.fromEntries(
    Object.entries(process.env).flatMap(([name, value]) =>
      value === undefined || name === "COURTLOOM_DIST" ? [] : [[name, value]],
    ),
  );
