import { type AlertsMirror, type Channel, createAlertsMirror } from "@courtloom/sync";
import { deviceStorage } from "../board/choice/device-storage.ts";
import { feelDevice } from "../pad/feel/feel-device.ts";
import { createKeptMarks } from "./kept-marks.ts";
import { createNoticeTools, type NoticeTools } from "./notices/notice-tools.ts";

/** A day's alerts on a page, with what presents its notices. */
export interface OpenedAlerts {
  readonly mirror: AlertsMirror;
  readonly notices: NoticeTools;
  readonly memberId: string;
  readonly close: () => void;
}

/** Follows a day's alerts over a page's connection, for a member; in a browser only. */
export const openAlerts = (channel: Channel, dayId: string, memberId: string): OpenedAlerts => {
  const storage = deviceStorage("localStorage");
  const mirror = createAlertsMirror({ channel, dayId, kept: createKeptMarks(storage, memberId, dayId) });
  const notices = createNoticeTools({ mirror, storage, account: memberId, device: feelDevice() });
  return {
    mirror,
    notices,
    memberId,
    close: () => {
      notices.close();
      mirror.close();
    },
  };
};
