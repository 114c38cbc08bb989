import { SHELL_PATH, WORKER_PATH } from "./shell-name.ts";

/** A worker that is asked to take over does so within moments or not at all: another pad is open. */
const TAKE_OVER_WITHIN_MS = 1_500;
/** A whole build comes within this over a poor network; after it a person may try once more. */
const INSTALL_WITHIN_MS = 20_000;

const container = (): ServiceWorkerContainer | undefined =>
  window.isSecureContext && "serviceWorker" in navigator ? navigator.serviceWorker : undefined;

const after = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** What is needed to chart comes first; what the next opening needs is fetched after it. */
const loaded = (): Promise<void> =>
  document.readyState === "complete"
    ? Promise.resolve()
    : new Promise((resolve) => window.addEventListener("load", () => resolve(), { once: true }));

/** Resolves once `worker` is whole, or has failed. */
const installed = (worker: ServiceWorker): Promise<void> =>
  new Promise((resolve) => {
    const look = () => {
      if (worker.state !== "installing") resolve();
    };
    worker.addEventListener("statechange", look);
    look();
  });

/** Asks a waiting worker to serve this page from now on, and loads the page anew when it does. */
const takeOver = async (
  workers: ServiceWorkerContainer,
  waiting: ServiceWorker,
  ask: "takeOver" | "takeOverAlone",
): Promise<void> => {
  const loadsAgain = new Promise<void>(() => {
    workers.addEventListener("controllerchange", () => location.reload(), { once: true });
  });
  waiting.postMessage(ask);
  // Loading again ends this page; until then nothing more is opened in it.
  await Promise.race([loadsAgain, after(TAKE_OVER_WITHIN_MS)]);
};

/**
 * Before anything is opened: a newer build that this phone already holds whole takes over now, at an opening, and
 * so never under a point. Costs nothing when there is none. SPEC PD42.
 */
export const settleShell = async (): Promise<void> => {
  const workers = container();
  const waiting = (await workers?.getRegistration(SHELL_PATH))?.waiting;
  if (workers?.controller && waiting) await takeOver(workers, waiting, "takeOverAlone");
};

/**
 * Has the browser keep this build's page and files, once they are loaded, so that the next opening needs no
 * network; answers whether they are kept. Over plain http no browser does. SPEC PD41.
 */
export const keepShellOnPhone = async (): Promise<boolean> => {
  const workers = container();
  if (!workers) return false;
  await loaded();
  try {
    const registration = await workers.register(WORKER_PATH, { scope: SHELL_PATH, updateViaCache: "none" });
    if (registration.installing && !registration.active) await installed(registration.installing);
    return registration.active !== null || registration.waiting !== null;
  } catch {
    // No network just now, or the browser forbids it: what an earlier opening kept still holds.
    return (await workers.getRegistration(SHELL_PATH))?.active != null;
  }
};

/** A person asks for the newest page, as the server no longer takes what this one says. */
export const loadNewestShell = async (): Promise<void> => {
  const workers = container();
  const registration = await workers?.getRegistration(SHELL_PATH);
  if (workers && registration) {
    try {
      await Promise.race([registration.update(), after(INSTALL_WITHIN_MS)]);
      if (registration.installing)
        await Promise.race([installed(registration.installing), after(INSTALL_WITHIN_MS)]);
      if (registration.waiting) await takeOver(workers, registration.waiting, "takeOver");
    } catch {
      // The server was not reached: the page that is kept is the newest there is.
    }
  }
  location.reload();
};
