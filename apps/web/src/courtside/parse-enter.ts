import type { CourtsideEnter } from "../pad/courtside.ts";

const LONGEST = 200;

const isText = (value: unknown): value is string => typeof value === "string" && value.length <= LONGEST;

/** The body of an entry with a code; undefined for anything else, unknown members included. */
export const parseEnter = (text: string): CourtsideEnter | undefined => {
  try {
    const body: unknown = JSON.parse(text);
    if (typeof body !== "object" || body === null || Object.keys(body).sort().join() !== "code,name")
      return undefined;
    const { code, name } = body as Record<string, unknown>;
    return isText(code) && isText(name) ? { code, name } : undefined;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
};
