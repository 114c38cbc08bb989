import type { IncomingMessage } from "node:http";

const LOOPBACK = /^(?:::1|(?:::ffff:)?127\.\d+\.\d+\.\d+)$/;

/** The network address behind a request: what the front door wrote, if it comes from this machine. */
export const addressOf = ({ headers, socket }: Pick<IncomingMessage, "headers" | "socket">): string => {
  const peer = socket.remoteAddress ?? "unknown";
  const written = headers["x-forwarded-for"];
  const told = (Array.isArray(written) ? written.at(-1) : written)?.split(",").at(-1)?.trim();
  return LOOPBACK.test(peer) && told ? told : peer;
};
