import { type Leave, leaveShape } from "@courtloom/protocol";
import type { MessageKind } from "./message-context.ts";

const leaving = (kind: "court" | "board" | "alerts"): MessageKind<Leave> => ({
  shape: leaveShape,
  handle: async ({ id }, { subscriptions }) => {
    subscriptions.end(`${kind}/${id}`);
    return { ok: true };
  },
});

/** Stops following a match. Also right when it was not followed. */
export const courtLeave = leaving("court");
/** Stops following a day. */
export const boardLeave = leaving("board");
/** Stops following the alerts of a day. */
export const alertsLeave = leaving("alerts");
