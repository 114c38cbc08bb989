export { mayHold } from "./coaching.ts";
export { DOWN, UP } from "./events.ts";
export {
  BEAT_EVERY_MS,
  LANE_FILE_FORMAT,
  LANE_FILE_VERSION,
  MAX_BATCH_BYTES,
  MAX_BATCH_ENTRIES,
  MAX_LANE_FILE_BYTES,
  SOCKET_PATH,
} from "./limits.ts";
export { PROTOCOL_VERSION } from "./version.ts";
