import { acrossNet } from "./channel.ts";
import type { Stroke } from "./stroke.ts";

/**
 * Whether a ball was sent on another line than it came: to another channel than the one from which the
 * opponent struck it. `undefined` when the incoming stroke was not drawn or the answer has no direction. SPEC G14.
 */
export function isChangeOfDirection(
  incoming: Pick<Stroke, "channel"> | undefined,
  own: Pick<Stroke, "toChannel">,
): boolean | undefined {
  if (incoming === undefined || own.toChannel === undefined) return undefined;
  return own.toChannel !== acrossNet(incoming.channel);
}
