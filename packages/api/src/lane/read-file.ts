import { type ReadLaneFile, readLaneFile } from "@courtloom/protocol";
import { z } from "zod";
import { failure } from "../errors/failure.ts";

/** The file as the browser parsed it from JSON; what is in it is judged by its own reader, with its own sentences. */
export const fileInput = z.strictObject({ file: z.unknown() });

/** Refused with one of three sentences when it is not a file that a pad saved. Rule AP14. */
export const readFile = ({ file }: z.infer<typeof fileInput>): ReadLaneFile => {
  const read = readLaneFile(file);
  if (!read.ok) throw failure(read.error);
  return read.value;
};
