import type { Stream } from "./stream.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** What can be wrong with the way between one device and the server, switched on and off by the plan. */
export interface LinkFaults {
  /** Everything vanishes, and neither end notices. */
  swallows: boolean;
  /** Nothing arrives before this moment; nothing is lost. */
  stalledUntilMs: number;
  duplicates: boolean;
  reorders: boolean;
  /** Answers are lost on their way back; what is pushed is not. */
  losesAnswers: boolean;
  /** Of a batch only the first entries arrive. */
  truncates: boolean;
  /** The device does not take what is sent to it. */
  isSlow: boolean;
  /** No connection comes about. */
  isCut: boolean;
}

export const soundLink = (): LinkFaults => ({
  swallows: false,
  stalledUntilMs: 0,
  duplicates: false,
  reorders: false,
  losesAnswers: false,
  truncates: false,
  isSlow: false,
  isCut: false,
});

/** One direction of one connection. */
export interface Pipe {
  /** Delivers after a delay, in order unless the link reorders, perhaps twice, perhaps not at all. */
  readonly send: (deliver: () => void, isAnswer?: boolean) => void;
}

const LOST_SHARE = 0.6;
const TWICE_SHARE = 0.5;

export const createPipe = (time: VirtualTime, stream: Stream, faults: LinkFaults): Pipe => {
  let lastMs = 0;
  const deliverAt = (atMs: number, deliver: () => void): void => {
    time.after(atMs - time.nowMs(), deliver);
  };
  return {
    send: (deliver, isAnswer = false) => {
      if (faults.swallows) return;
      if (isAnswer && faults.losesAnswers && stream.chance(LOST_SHARE)) return;
      const ownMs = Math.max(time.nowMs() + stream.int(4, 60), faults.stalledUntilMs);
      const atMs = faults.reorders ? ownMs + stream.int(0, 400) : Math.max(ownMs, lastMs);
      lastMs = Math.max(lastMs, atMs);
      deliverAt(atMs, deliver);
      if (faults.duplicates && stream.chance(TWICE_SHARE)) deliverAt(atMs + stream.int(0, 120), deliver);
    },
  };
};
