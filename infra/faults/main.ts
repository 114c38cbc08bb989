// Kills each part of the running product in turn and shows that it comes back with its data.
//   node infra/faults/main.ts                the product itself
//   node infra/faults/main.ts --stand-ins    the supervisor and the database alone: quick
import { chmodSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import process from "node:process";
import { fileURLToPath } from "node:url";
import { freePort } from "@courtloom/db/embedded";
import { runFaults } from "./run-faults.ts";

const here = resolve(fileURLToPath(import.meta.url), "..");
const entry = process.argv.includes("--stand-ins")
  ? join(here, "stand-ins", "main.ts")
  : join(here, "..", "start", "main.ts");

const folder = mkdtempSync(join(tmpdir(), "courtloom-faults-"));
// As root the database's user has to get through; closed folders are another test's matter.
chmodSync(folder, 0o711);
let [passed, failed] = [0, 0];
try {
  const site = { entry, dataDir: join(folder, "data"), port: await freePort() };
  const whole = await runFaults(site, (result) => {
    console.log(
      `${result.fault === undefined ? "ok  " : "FAIL"} ${result.name} (${result.seconds.toFixed(1)} s)`,
    );
    if (result.fault !== undefined) console.log(result.fault);
    if (result.fault === undefined) passed += 1;
    else failed += 1;
  });
  if (!whole && failed === 0) failed += 1;
} catch (error) {
  console.log(String(error));
  failed += 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
