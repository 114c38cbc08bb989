import { z } from "zod";
import { handField, idField, playerNameField } from "../fields.ts";

const known = z.strictObject({ playerId: idField });
const fresh = z.strictObject({ name: playerNameField, hand: handField, own: z.boolean() });

/** Somebody on the list, or somebody new, who is put on it. */
const playerField = z.union([known, fresh], "Choose a player from the list, or write a new name.");
export type NamedPlayer = z.infer<typeof playerField>;

/** One player, or two for a pair. */
export const sideField = z
  .array(playerField, "Name a player.")
  .min(1, "Name a player.")
  .max(2, "A side has at most two players.");
