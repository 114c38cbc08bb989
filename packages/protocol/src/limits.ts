/** Bounds that both sides keep. */
export const MAX_BATCH_ENTRIES = 50;
export const MAX_BATCH_BYTES = 32 * 1024;
export const MAX_MESSAGE_BYTES = 64 * 1024;
export const MAX_READ_ENTRIES = 500;
/** A phone says that it is there this often. */
export const BEAT_EVERY_MS = 3_000;
/** Socket path on the one port that people open. */
export const SOCKET_PATH = "/rt";
/** Marks a file of lanes that a phone saved, and its version: raised when its shape changes. */
export const LANE_FILE_FORMAT = "courtloom-lanes";
export const LANE_FILE_VERSION = 1;
/** A whole day of one phone is far smaller. */
export const MAX_LANE_FILE_BYTES = 2 * 1024 * 1024;
