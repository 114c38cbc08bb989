import { demoToday, loadDemo } from "@courtloom/api";
import { createDayStore, openDb } from "@courtloom/db";
import { readDemoEnv } from "./env.ts";
import { openStores, systemClock } from "./open-stores.ts";

/** Whether the demonstration academy is in the database behind `appUrl`. */
export const isDemoLoaded = async (appUrl: string): Promise<boolean> => {
  const db = openDb(appUrl, { poolSize: 1 });
  try {
    return (await createDayStore(db).demoAcademyId()) !== undefined;
  } finally {
    await db.close();
  }
};

const load = async (): Promise<void> => {
  const stores = openStores(readDemoEnv());
  try {
    let said = 0;
    await loadDemo({
      store: stores.days,
      createAccount: stores.auth.createAccount,
      date: demoToday(systemClock.wallMs()),
      onProgress: (_, what) => {
        if (systemClock.monotonicMs() - said < 1_000) return;
        said = systemClock.monotonicMs();
        console.log(what);
      },
    });
  } finally {
    await stores.close();
  }
};

if (import.meta.main) {
  if (process.argv.includes("--is-loaded")) {
    process.exitCode = (await isDemoLoaded(readDemoEnv().appUrl)) ? 0 : 1;
  } else {
    await load();
  }
}
