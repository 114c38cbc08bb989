import type { AlertKey } from "@courtloom/protocol";

/** An alert's key as one text, to hold it by. */
export const alertKeyText = ({ matchId, playerId, rate, version, episode }: AlertKey): string =>
  [matchId, playerId, rate, version, episode].join("/");
