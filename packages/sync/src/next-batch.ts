import type { Entry } from "@courtloom/match-log";
import { MAX_BATCH_BYTES } from "@courtloom/protocol/names";

/** Bytes of a text in UTF-8. */
const utf8Bytes = (text: string): number => {
  let bytes = 0;
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    bytes += code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
  }
  return bytes;
};

/**
 * The entries after n = `acked` that go into the next message: at most `most`, at most 32 KB, in
 * order. One entry that is larger by itself goes alone. Empty when everything is acknowledged.
 */
export const nextBatch = (entries: readonly Entry[], acked: number, most: number): readonly Entry[] => {
  const batch: Entry[] = [];
  let bytes = 0;
  for (const entry of entries.slice(acked, acked + most)) {
    bytes += utf8Bytes(JSON.stringify(entry)) + 1;
    if (batch.length > 0 && bytes > MAX_BATCH_BYTES) break;
    batch.push(entry);
  }
  return batch;
};
