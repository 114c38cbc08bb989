import type { AlertKey } from "@courtloom/protocol";
import { alertKeyText } from "@courtloom/sync";

/** The match's page with this alert's points open. */
export const alertHref = (key: AlertKey): string =>
  `/court/${key.matchId}?alert=${encodeURIComponent(alertKeyText(key))}`;
