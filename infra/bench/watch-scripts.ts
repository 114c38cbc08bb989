import type { Page } from "@playwright/test";
import { addBytes, inlineBytes, type ScriptBytes, scriptFileBytes } from "./script-bytes.ts";

export interface LoadedScripts extends ScriptBytes {
  readonly files: number;
}

/** Scripts that a page asked for so far, whoever asked: a tag, a preload, an import at run time. */
export interface ScriptWatch {
  /** Waits until nothing is being loaded, then counts; each address once. */
  readonly count: () => Promise<LoadedScripts>;
}

const INLINE = "[...document.scripts].filter((script) => !script.src).map((script) => script.textContent)";

/** Begin before the page goes anywhere. */
export const watchScripts = async (page: Page): Promise<ScriptWatch> => {
  const urls = new Set<string>();
  const protocol = await page.context().newCDPSession(page);
  protocol.on("Network.responseReceived", ({ type, response }) => {
    if (type === "Script") urls.add(response.url);
  });
  await protocol.send("Network.enable");
  return {
    count: async () => {
      await page.waitForLoadState("networkidle");
      const files = await Promise.all([...urls].map(scriptFileBytes));
      const inline = inlineBytes((await page.evaluate(INLINE)) as string[]);
      return { files: files.length, ...addBytes([...files, inline]) };
    },
  };
};
