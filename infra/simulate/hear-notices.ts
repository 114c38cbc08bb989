import { type AlertKey, type AlertNotices, type AlertsWatchReply, DOWN, UP } from "@courtloom/protocol";
import type { Ledger } from "./ledger.ts";
import type { Peer, Session } from "./live-core.ts";

/** Notes what a server sends to one person about alerts, before any link can lose it or send it twice. */
export const hearNotices = (peer: Peer, connect: (peer: Peer) => Session, ledger: Ledger): Session => {
  const note = (notices: readonly AlertKey[]): void => {
    for (const key of notices) ledger.noticed(peer.cookieHeader ?? "nobody", JSON.stringify(key));
  };
  const session = connect({
    ...peer,
    viewer: {
      send: (event, message) => {
        if (event === DOWN.alertNotices) note((message as AlertNotices).notices);
        peer.viewer.send(event, message);
      },
    },
  });
  return {
    ...session,
    receive: async (event, payload) => {
      const answer = await session.receive(event, payload);
      if (event === UP.alertsWatch && answer.ok)
        note((answer as Extract<AlertsWatchReply, { ok: true }>).notices);
      return answer;
    },
  };
};
