import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { keepShellOnPhone, loadNewestShell, settleShell } from "./shell.ts";

interface Registration {
  active: object | null;
  waiting: { postMessage: (message: string) => void } | null;
  installing: { state: string; addEventListener: (name: string, changed: () => void) => void } | null;
  update: () => Promise<void>;
}

/** A browser with a worker that gives way, or not, when it is asked. */
const makeBrowser = (over: Partial<Registration> = {}, givesWay = true) => {
  const asked: string[] = [];
  const changes: (() => void)[] = [];
  const waiting = {
    postMessage: (message: string) => {
      asked.push(message);
      if (givesWay) for (const change of changes) change();
    },
  };
  const registration: Registration = {
    ...{ active: {}, waiting: null, installing: null, update: async () => undefined },
    ...over,
  };
  const serviceWorker = {
    controller: {},
    getRegistration: async () => registration,
    register: vi.fn(async () => registration),
    addEventListener: (_: string, change: () => void) => changes.push(change),
  };
  const reload = vi.fn();
  vi.stubGlobal("window", { isSecureContext: true, addEventListener: () => undefined });
  vi.stubGlobal("document", { readyState: "complete" });
  vi.stubGlobal("navigator", { serviceWorker });
  vi.stubGlobal("location", { reload });
  return { registration, serviceWorker, waiting, asked, reload };
};

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe("a newer build of the pad", () => {
  it("[PD42] takes over at an opening, before anything else, and the page is loaded anew", async () => {
    const browser = makeBrowser();
    browser.registration.waiting = browser.waiting;
    const settled = settleShell();
    await vi.advanceTimersByTimeAsync(10);
    expect(browser.asked).toEqual(["takeOverAlone"]);
    expect(browser.reload).toHaveBeenCalledTimes(1);
    await vi.advanceTimersByTimeAsync(2_000);
    await settled;
  });

  it("[PD42] waits when another pad is open, and nothing is loaded anew", async () => {
    const browser = makeBrowser({}, false);
    browser.registration.waiting = browser.waiting;
    const settled = settleShell();
    await vi.advanceTimersByTimeAsync(2_000);
    await settled;
    expect(browser.reload).not.toHaveBeenCalled();
  });

  it("[PD42] costs nothing when there is none", async () => {
    const browser = makeBrowser();
    await settleShell();
    expect(browser.asked).toEqual([]);
    vi.stubGlobal("window", { isSecureContext: false });
    await settleShell();
  });

  it("[PD42] is loaded when a person asks for it, whole before the page is loaded anew", async () => {
    const browser = makeBrowser();
    const changed: (() => void)[] = [];
    const installing = {
      state: "installing",
      addEventListener: (_: string, look: () => void) => changed.push(look),
    };
    browser.registration.update = async () => {
      browser.registration.installing = installing;
    };
    const newest = loadNewestShell();
    await vi.advanceTimersByTimeAsync(1_000);
    expect([browser.asked, browser.reload.mock.calls.length]).toEqual([[], 0]);
    installing.state = "installed";
    browser.registration.waiting = browser.waiting;
    for (const look of changed) look();
    await vi.advanceTimersByTimeAsync(2_000);
    await newest;
    expect(browser.asked).toEqual(["takeOver"]);
    expect(browser.reload).toHaveBeenCalled();
  });

  it("[PD42] that cannot be reached leaves the one that is kept", async () => {
    const browser = makeBrowser({ update: () => Promise.reject(new TypeError("no network")) });
    await loadNewestShell();
    expect([browser.asked, browser.reload.mock.calls.length]).toEqual([[], 1]);
  });
});

describe("keeping the pad on the phone", () => {
  it("[PD41] registers for the pad alone and answers whether it is kept", async () => {
    const { serviceWorker } = makeBrowser();
    expect(await keepShellOnPhone()).toBe(true);
    expect(serviceWorker.register).toHaveBeenCalledWith("/pad-worker.js", {
      ...{ scope: "/pad", updateViaCache: "none" },
    });
  });

  it("[PD41] is not possible over plain http; without a network what was kept before holds", async () => {
    const browser = makeBrowser();
    browser.serviceWorker.register.mockRejectedValue(new TypeError("no network"));
    expect(await keepShellOnPhone()).toBe(true);
    browser.registration.active = null;
    expect(await keepShellOnPhone()).toBe(false);
    vi.stubGlobal("window", { isSecureContext: false });
    expect(await keepShellOnPhone()).toBe(false);
  });
});
