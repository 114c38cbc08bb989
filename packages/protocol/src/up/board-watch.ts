import { z } from "zod";
import { idField, versionField } from "../field.ts";
import type { Refusal } from "../refusal.ts";
import type { Tile } from "../tile.ts";

export const BOARD_VIEWS = ["staff", "wall"] as const;
/** `wall` carries scores and order of play only, whoever asks. */
export type BoardView = (typeof BOARD_VIEWS)[number];

export interface BoardWatch {
  readonly v: number;
  readonly dayId: string;
  readonly view: BoardView;
}

export const boardWatchShape = z.strictObject({
  v: versionField,
  dayId: idField,
  view: z.enum(BOARD_VIEWS),
}) satisfies z.ZodType<BoardWatch>;

export interface BoardSnapshot {
  readonly ok: true;
  readonly dayId: string;
  readonly dayName: string;
  readonly academyName: string;
  readonly timeZone: string;
  /** The server's clock, to tell ages by. */
  readonly serverMs: number;
  /** One tile per court, by court number. */
  readonly tiles: readonly Tile[];
}

export type BoardWatchReply = BoardSnapshot | Refusal;
