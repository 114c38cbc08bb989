import type { ListenError } from "./door-server.ts";
import type { StartEnv } from "./env.ts";

/** Why a port could not be opened, and what to do. */
export function listenSentence({ port, code, message }: ListenError, env: StartEnv): string {
  const setting = port === env.port ? "PORT" : "HTTPS_PORT";
  if (code === "EADDRINUSE") {
    return `Port ${port} is in use by another program. Stop that one, or start with another port: ${setting}=${port + 1} npm start`;
  }
  if (code === "EACCES") {
    const free = setting === "PORT" ? 3000 : 3443;
    return `This user may not open port ${port}. Take one above 1023: ${setting}=${free} npm start`;
  }
  if (code === "EADDRNOTAVAIL" || code === "ENOTFOUND") {
    return `HOST is "${env.host}", which is no address of this machine. Leave it out to listen on all.`;
  }
  return `Port ${port} could not be opened: ${message}`;
}
