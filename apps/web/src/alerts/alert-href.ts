import type { AlertLine } from "@courtloom/protocol";
import { alertKeyText } from "@courtloom/sync";

/** The match's page, with this alert's points open; between two own players the page shows no alerts. SPEC rule AS25. */
export const alertHref = ({ key, bothOwn }: Pick<AlertLine, "key" | "bothOwn">): string =>
  bothOwn ? `/court/${key.matchId}` : `/court/${key.matchId}?alert=${encodeURIComponent(alertKeyText(key))}`;

export const hrefWords = ({ bothOwn }: Pick<AlertLine, "bothOwn">): string =>
  bothOwn ? "Open the match" : "Open its points";
