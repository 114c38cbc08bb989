import { beginAndWait, inDatabase, type ProductRun, type Site, until } from "./product-run.ts";
import { answersAll, SCENARIOS, stopAndCheck } from "./scenarios.ts";

export interface FaultResult {
  readonly name: string;
  readonly seconds: number;
  /** `undefined` if everything held. */
  readonly fault: string | undefined;
}

const ANSWER_WITHIN_MS = 30_000;

/**
 * Runs every scenario in turn on one data folder. Before each a row is committed; after each everything has
 * to answer and every row written so far has to be there once. Ends at the first that fails.
 */
export async function runFaults(site: Site, report: (result: FaultResult) => void): Promise<boolean> {
  let current: ProductRun = await beginAndWait(site);
  try {
    await inDatabase(site, (sql) => sql`create table fault_rows (n integer primary key)`);
    for (const [index, scenario] of SCENARIOS.entries()) {
      const began = performance.now();
      const finish = (fault: string | undefined): void =>
        report({ name: scenario.name, seconds: (performance.now() - began) / 1000, fault });
      try {
        await inDatabase(site, (sql) => sql`insert into fault_rows values (${index})`);
        current = await scenario.run(site, current);
        await until("everything answers", ANSWER_WITHIN_MS, () => answersAll(site));
        await checkRows(site, index + 1);
      } catch (error) {
        finish(`${String(error)}\n${current.output().slice(-2000)}`);
        return false;
      }
      finish(undefined);
    }
    await stopAndCheck(site, current);
    return true;
  } finally {
    if (current.child.exitCode === null && current.child.signalCode === null) {
      current.child.kill("SIGTERM");
      await current.ended;
    }
  }
}

async function checkRows(site: Site, expected: number): Promise<void> {
  const rows = await inDatabase(site, (sql) => sql<{ n: number }[]>`select n from fault_rows order by n`);
  const found = rows.map((row) => row.n).join(",");
  const wanted = Array.from({ length: expected }, (_, n) => n).join(",");
  if (found !== wanted) throw new Error(`rows committed: ${wanted}; rows found: ${found}`);
}
