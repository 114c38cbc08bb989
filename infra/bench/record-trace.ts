import type { Browser } from "@playwright/test";
import type { TraceEvent } from "./drag-latencies.ts";

/** Frames with their presentation, and the page's marks; nothing more, since tracing costs time itself. */
const CATEGORIES = ["devtools.timeline", "blink.user_timing"];

/** The browser's own trace of what happens during `run`. */
export const recordTrace = async (
  browser: Browser,
  run: () => Promise<void>,
  alsoCategories: readonly string[] = [],
): Promise<TraceEvent[]> => {
  const protocol = await browser.newBrowserCDPSession();
  const events: TraceEvent[] = [];
  protocol.on("Tracing.dataCollected", ({ value }) => {
    events.push(...(value as unknown as TraceEvent[]));
  });
  await protocol.send("Tracing.start", {
    transferMode: "ReportEvents",
    traceConfig: { includedCategories: [...CATEGORIES, ...alsoCategories], excludedCategories: ["*"] },
  });
  await run();
  const complete = new Promise<void>((resolve) => protocol.once("Tracing.tracingComplete", () => resolve()));
  await protocol.send("Tracing.end");
  await complete;
  await protocol.detach();
  return events;
};
