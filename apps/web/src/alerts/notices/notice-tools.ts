import type { AlertsMirror } from "@courtloom/sync";
import { createContext, useContext } from "react";
import type { ChoiceStorage } from "../../board/choice/choice-store.ts";
import { createFeel, type Feel, type FeelDevice } from "../../pad/feel/feel.ts";
import { createNoticeStore, type NoticeStore } from "./notice-store.ts";
import { createSwitchStore, type SwitchStore } from "./notice-switches.ts";

/** What presents notices on a page. */
export interface NoticeTools {
  readonly notices: NoticeStore;
  readonly switches: SwitchStore;
  readonly canVibrate: boolean;
  /** Sounds and vibrates as the switches say. */
  readonly give: () => void;
  readonly close: () => void;
}

export interface NoticeToolsOptions {
  readonly mirror: AlertsMirror;
  readonly storage: ChoiceStorage | undefined;
  readonly account: string;
  readonly device: FeelDevice;
}

/** The feel follows the switches: made anew when they change, so that a device lets go of what is off. */
export const createNoticeTools = ({ mirror, storage, account, device }: NoticeToolsOptions): NoticeTools => {
  const switches = createSwitchStore(storage);
  const make = (): Feel => {
    const { sound, vibration } = switches.get();
    return createFeel({ haptics: vibration, sound, device });
  };
  let feel = make();
  const stop = switches.subscribe(() => {
    feel.close();
    feel = make();
  });
  const give = () => feel.give("notice");
  const notices = createNoticeStore({ mirror, storage, account, present: give });
  return {
    notices,
    switches,
    canVibrate: device.vibrate !== undefined,
    give,
    close: () => {
      stop();
      notices.close();
      feel.close();
    },
  };
};

export const NoticeToolsContext = createContext<NoticeTools | null>(null);

export const useNoticeTools = (): NoticeTools => {
  const tools = useContext(NoticeToolsContext);
  if (tools === null) throw new Error("bug: notices outside of their page");
  return tools;
};
