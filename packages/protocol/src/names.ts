export { DOWN, UP } from "./events.ts";
export { BEAT_EVERY_MS, MAX_BATCH_BYTES, MAX_BATCH_ENTRIES, SOCKET_PATH } from "./limits.ts";
export { PROTOCOL_VERSION } from "./version.ts";
