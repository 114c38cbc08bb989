import "server-only";
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { buildFolder } from "../env.ts";
import { once } from "./once.ts";

const read = async (): Promise<string | undefined> => {
  try {
    return (await readFile(join(process.cwd(), buildFolder(), "BUILD_ID"), "utf8")).trim();
  } catch {
    // The development server builds nothing, so there is no build to name.
    return undefined;
  }
};

/** The id of the build that this server serves; undefined under the development server. */
export const buildId = (): Promise<string | undefined> => once("buildId", read);
