import { useState } from "react";
import { Notices } from "../notices.tsx";
import type { PadNotice } from "../pad-notices.ts";
import { clockWords, copyGoneWords } from "./offline-words.ts";

interface OfflineNoticesProps {
  readonly clockAheadMinutes: number | undefined;
  /** Undefined while this phone has its own copy. */
  readonly sentPoints: number | undefined;
}

const noticesOf = ({ clockAheadMinutes, sentPoints }: OfflineNoticesProps): readonly PadNotice[] => [
  ...(sentPoints === undefined
    ? []
    : [{ id: "copyGone", text: copyGoneWords(sentPoints), help: "none" } as const]),
  ...(clockAheadMinutes === undefined
    ? []
    : [{ id: "clock", text: clockWords(clockAheadMinutes), help: "none" } as const]),
];

/** What was lost and what the clock does, each until it was read and put away. */
export const OfflineNotices = (props: OfflineNoticesProps) => {
  const [read, setRead] = useState<readonly PadNotice["id"][]>([]);
  return noticesOf(props)
    .filter(({ id }) => !read.includes(id))
    .map((notice) => (
      <Notices
        key={notice.id}
        notices={[notice]}
        onHelp={() => undefined}
        onDismiss={() => setRead([...read, notice.id])}
      />
    ));
};
