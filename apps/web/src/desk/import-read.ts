import { err, ok, type Result } from "@courtloom/core";
import { MAX_LANE_FILE_BYTES } from "@courtloom/protocol/names";

const MB = 1024 * 1024;

/** A chosen file as JSON; otherwise a sentence that says why not and what to do. What is in it is the server's to judge. */
export const readChosenFile = async (file: Pick<File, "size" | "text">): Promise<Result<unknown, string>> => {
  if (file.size > MAX_LANE_FILE_BYTES) {
    const size = (file.size / MB).toFixed(1);
    return err(
      `This file has ${size} MB; a file that a pad saved has at most ${MAX_LANE_FILE_BYTES / MB} MB. Choose another.`,
    );
  }
  try {
    return ok(JSON.parse(await file.text()) as unknown);
  } catch {
    // Not JSON, or it can no longer be read from where it was chosen.
    return err("This file cannot be read. Choose one named like courtloom-court-3-2026-05-30.json.");
  }
};
