import { pino } from "pino";
import type { FaultFacts, Log } from "../runtime.ts";

/** An error's kind, code and stack; its message stays out, since a database puts values into it. */
const errorFacts = (error: unknown): object => {
  if (!(error instanceof Error)) return { kind: typeof error };
  const code = "code" in error && typeof error.code === "string" ? { code: error.code } : {};
  const frames = error.stack?.split("\n").filter((line) => line.trimStart().startsWith("at ")) ?? [];
  return { kind: error.name, ...code, at: frames.slice(0, 8).map((line) => line.trim()) };
};

const safe = ({ error, ...facts }: FaultFacts): object =>
  error === undefined ? facts : { ...facts, error: errorFacts(error) };

/** Lines of JSON with ids and positions, never names, tokens or contents. ERROR only where somebody must act. */
export const createPinoLog = (
  instanceId: string,
  destination: { readonly write: (line: string) => void },
): Log => {
  const logger = pino({ base: { process: "live", instanceId } }, destination);
  return {
    fault: (what, facts) => logger.error(safe(facts), what),
    note: (what, facts) => logger.info(safe(facts), what),
  };
};
