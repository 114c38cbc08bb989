import { z } from "zod";
import { OLDEST_PROTOCOL_VERSION, PROTOCOL_VERSION } from "./version.ts";

/** Fields that many messages share. Ids are opaque; their form keeps junk out. */
export const idField = z
  .string()
  .min(1)
  .max(64)
  .regex(/^[A-Za-z0-9_-]+$/);
export const versionField = z.number().int().min(OLDEST_PROTOCOL_VERSION).max(PROTOCOL_VERSION);
export const posField = z.number().int().min(0).max(1_000_000);
export const wallField = z.number().int().min(0).max(8_640_000_000_000_000);
