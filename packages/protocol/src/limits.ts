/** Bounds that both sides keep. */
export const MAX_BATCH_ENTRIES = 50;
export const MAX_BATCH_BYTES = 32 * 1024;
export const MAX_MESSAGE_BYTES = 64 * 1024;
export const MAX_READ_ENTRIES = 500;
/** A phone says that it is there this often. */
export const BEAT_EVERY_MS = 3_000;
/** Socket path on the one port that people open. */
export const SOCKET_PATH = "/rt";
