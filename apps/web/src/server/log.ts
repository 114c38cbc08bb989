import "server-only";
import pino from "pino";

/** The web server's log: ids and codes, never a name, a code or a token. */
export const log = pino({ name: "web", base: {} });
