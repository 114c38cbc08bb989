/** What is felt and heard: a ball or a point was taken in; a whole point was done; staff are told of something. */
export type Felt = "tick" | "done" | "notice";

export interface Feel {
  readonly give: (felt: Felt) => void;
  /** Lets go of the device's sound. */
  readonly close: () => void;
}

export interface FeelOptions {
  readonly haptics: boolean;
  readonly sound: boolean;
  /** The device's ways; a test passes its own. */
  readonly device: FeelDevice;
}

export interface FeelDevice {
  /** A pattern in milliseconds; undefined where the device has no tick in the hand. */
  readonly vibrate: ((pattern: readonly number[]) => void) | undefined;
  /** Undefined where the browser makes no sound of its own. */
  readonly createAudio: (() => AudioContext) | undefined;
}

const PATTERNS = { tick: [10], done: [10, 60, 18], notice: [90, 80, 90] } as const satisfies Record<
  Felt,
  readonly number[]
>;
/** One high tick for a ball, a lower and longer one for Done, a long one for a notice: told apart without looking. */
const SOUNDS = {
  tick: { hz: 1_500, ms: 25 },
  done: { hz: 620, ms: 70 },
  notice: { hz: 880, ms: 450 },
} as const;
/** Loud enough beside a court, not across it. */
const VOLUME = 0.16;
/** What an exponential fade may end at: it never reaches 0. */
const SILENT = 0.0001;

const sound = (audio: AudioContext, { hz, ms }: (typeof SOUNDS)[Felt]): void => {
  const from = audio.currentTime;
  const until = from + ms / 1_000;
  const tone = audio.createOscillator();
  const loudness = audio.createGain();
  tone.frequency.value = hz;
  loudness.gain.setValueAtTime(VOLUME, from);
  loudness.gain.exponentialRampToValueAtTime(SILENT, until);
  tone.connect(loudness).connect(audio.destination);
  tone.start(from);
  tone.stop(until);
};

/**
 * A tick in the hand and one to hear, each only if it is on and the device has it; nothing otherwise. The
 * sound is opened with the first tick, which a touch or a key caused, since browsers let no page sound before.
 */
export const createFeel = ({ haptics, sound: isHeard, device }: FeelOptions): Feel => {
  let audio: AudioContext | undefined;
  return {
    give: (felt) => {
      if (haptics) device.vibrate?.(PATTERNS[felt]);
      if (!isHeard || !device.createAudio) return;
      audio ??= device.createAudio();
      // A page that was in the background comes back with its sound suspended.
      if (audio.state === "suspended") void audio.resume();
      sound(audio, SOUNDS[felt]);
    },
    close: () => {
      void audio?.close();
      audio = undefined;
    },
  };
};
