import { UP } from "@courtloom/protocol";
import { alertMark } from "./alert-mark.ts";
import { alertsWatch } from "./alerts-watch.ts";
import { boardWatch } from "./board-watch.ts";
import { courtRead, courtWatch } from "./court-watch.ts";
import { laneAppend } from "./lane-append.ts";
import { laneBeat } from "./lane-beat.ts";
import { laneOpen } from "./lane-open.ts";
import { alertsLeave, boardLeave, courtLeave } from "./leave.ts";
import type { MessageContext, MessageKind } from "./message-context.ts";

/** A kind with its shape and handler tied together, so that all kinds fit one table. */
export type ReadyMessage = (context: MessageContext) => ReturnType<MessageKind<never>["handle"]>;
type Reader = (raw: unknown) => ReadyMessage | undefined;

const reader =
  <M>({ shape, handle }: MessageKind<M>): Reader =>
  (raw) => {
    const parsed = shape.safeParse(raw);
    return parsed.success ? (context) => handle(parsed.data, context) : undefined;
  };

const READERS = {
  [UP.laneOpen]: reader(laneOpen),
  [UP.laneAppend]: reader(laneAppend),
  [UP.laneBeat]: reader(laneBeat),
  [UP.courtWatch]: reader(courtWatch),
  [UP.courtRead]: reader(courtRead),
  [UP.courtLeave]: reader(courtLeave),
  [UP.boardWatch]: reader(boardWatch),
  [UP.boardLeave]: reader(boardLeave),
  [UP.alertsWatch]: reader(alertsWatch),
  [UP.alertsLeave]: reader(alertsLeave),
  [UP.alertMark]: reader(alertMark),
} satisfies Readonly<Record<(typeof UP)[keyof typeof UP], Reader>>;

/** A map, so that names which every object has ("constructor") are unknown like any other. */
const BY_NAME: ReadonlyMap<string, Reader> = new Map(Object.entries(READERS));

/** How a message of that name is read; undefined for an unknown name. */
export const readerOf = (event: string): Reader | undefined => BY_NAME.get(event);
