import type { PadSnapshot } from "./pad-session.ts";
import { REFUSAL_WORDS, type RefusalHelp } from "./refusal-words.ts";

/** One thing that the chartist should know about the way to the server, with what to do about it. */
export interface PadNotice {
  readonly id:
    | "refused"
    | "noSignal"
    | "unstored"
    | "second"
    | "rejected"
    | "plainHttp"
    | "copyGone"
    | "clock";
  readonly text: string;
  readonly help: RefusalHelp;
}

const entries = (count: number) => (count === 1 ? "1 entry" : `${count} entries`);

const wayNotice = ({ status, durable }: PadSnapshot): PadNotice | undefined => {
  // Who leads, and that there is no signal meanwhile, is the screen's to say.
  if (status.leader && (status.refusal === "lead_taken" || status.signal === "noSignal")) return undefined;
  if (status.signal === "refused" && status.refusal)
    return { id: "refused", ...REFUSAL_WORDS[status.refusal] };
  if (status.signal !== "noSignal") return undefined;
  const text = durable
    ? "No signal. Everything is on this phone. Keep charting."
    : "No signal. Keep charting, and keep this page open.";
  return { id: "noSignal", text, help: "none" };
};

const storageNotice = ({ durable, status }: PadSnapshot): PadNotice | undefined =>
  durable && !status.unstored
    ? undefined
    : {
        id: "unstored",
        text: "This browser does not store the points. Keep this page open until all is sent.",
        help: "none",
      };

/** Own points that do not make the score, because another phone had taken over when they were charted. */
const secondNotice = ({ view, record, log, status }: PadSnapshot): PadNotice | undefined => {
  if (status.leader) return undefined;
  const leading = log.reduce((epoch, logged) => Math.max(epoch, logged.epoch), 0);
  const aside = new Set(view?.setAside.filter(({ reason }) => reason === "notLead").map(({ id }) => id));
  const own = log.some(({ laneId, entry }) => laneId === record.laneId && aside.has(entry.id));
  if (!own || record.epoch >= leading) return undefined;
  return {
    id: "second",
    text: "Another phone leads this match now. Your points are kept beside the score.",
    help: "none",
  };
};

const rejectedNotice = ({ status }: PadSnapshot): PadNotice | undefined =>
  status.rejected.length === 0
    ? undefined
    : {
        id: "rejected",
        text: `Not taken by the server: ${entries(status.rejected.length)}. Kept on this phone; show it to the desk.`,
        help: "none",
      };

/** What holds now, most pressing first. */
export const padNotices = (snapshot: PadSnapshot): readonly PadNotice[] =>
  [wayNotice(snapshot), storageNotice(snapshot), secondNotice(snapshot), rejectedNotice(snapshot)].filter(
    (notice) => notice !== undefined,
  );

export const PLAIN_HTTP_NOTICE: PadNotice = {
  id: "plainHttp",
  text: "Plain http: the screen may go dark, the phone may close this page, and without a network it does not open again. Keep it open.",
  help: "none",
};
