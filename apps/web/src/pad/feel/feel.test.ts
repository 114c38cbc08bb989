import { describe, expect, it } from "vitest";
import { createFeel } from "./feel.ts";

/** Sound as a browser makes it, as far as the pad uses it: what was started, and whether it was let go. */
const makeAudio = () => {
  const heard: { hz: number; seconds: number }[] = [];
  let closed = 0;
  const create = () => {
    const gain = { setValueAtTime: () => undefined, exponentialRampToValueAtTime: () => undefined };
    const loudness = { gain, connect: () => undefined };
    return {
      currentTime: 5,
      state: "running",
      destination: {},
      createGain: () => loudness,
      createOscillator: () => {
        const frequency = { value: 0 };
        return {
          frequency,
          connect: () => loudness,
          start: () => undefined,
          stop: (until: number) => heard.push({ hz: frequency.value, seconds: until - 5 }),
        };
      },
      close: async () => {
        closed += 1;
      },
    } as unknown as AudioContext;
  };
  return { heard, create, closed: () => closed };
};

describe("what is felt and heard", () => {
  it("[PD70] gives a tick for a ball and another for Done, in the hand only while that is on", () => {
    const felt: (readonly number[])[] = [];
    const device = {
      vibrate: (pattern: readonly number[]) => void felt.push(pattern),
      createAudio: undefined,
    };
    const on = createFeel({ haptics: true, sound: true, device });
    on.give("tick");
    on.give("done");
    createFeel({ haptics: false, sound: true, device }).give("done");
    expect(felt).toHaveLength(2);
    expect(felt[0]).not.toEqual(felt[1]);
  });

  it("[PD71] sounds only while sound is on, short, and differently for Done", () => {
    const audio = makeAudio();
    const device = { vibrate: undefined, createAudio: audio.create };
    createFeel({ haptics: true, sound: false, device }).give("done");
    expect(audio.heard).toEqual([]);
    const feel = createFeel({ haptics: true, sound: true, device });
    feel.give("tick");
    feel.give("done");
    expect(audio.heard).toHaveLength(2);
    expect(audio.heard[0]?.hz).not.toBe(audio.heard[1]?.hz);
    for (const { seconds } of audio.heard) expect(seconds).toBeLessThan(0.1);
    feel.close();
    expect(audio.closed()).toBe(1);
  });

  it("[PD70] is nothing, and no trouble, on a device that has neither", () => {
    const device = { vibrate: undefined, createAudio: undefined };
    const feel = createFeel({ haptics: true, sound: true, device });
    expect(() => feel.give("done")).not.toThrow();
    expect(() => feel.close()).not.toThrow();
  });
});
