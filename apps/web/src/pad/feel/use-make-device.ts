import { useEffect, useMemo, useState } from "react";
import type { PadSettings } from "../pad-settings.ts";
import { useWakeLock } from "../use-wake-lock.ts";
import { createFeel, type FeelDevice } from "./feel.ts";
import { feelDevice } from "./feel-device.ts";
import type { PadDevice } from "./pad-device.ts";

/** Nothing is known of the device until the page runs on it. */
const UNKNOWN: FeelDevice = { vibrate: undefined, createAudio: undefined };

/** The device as `PadDeviceContext` gives it on; the screen is kept awake while `charts`. */
export const useMakeDevice = ({ haptics, sound }: PadSettings, charts: boolean): PadDevice => {
  const [device, setDevice] = useState(UNKNOWN);
  useEffect(() => setDevice(feelDevice()), []);
  const feel = useMemo(() => createFeel({ haptics, sound, device }), [haptics, sound, device]);
  useEffect(() => feel.close, [feel]);
  const keptAwake = useWakeLock(charts);
  return useMemo(
    () => ({
      feel: feel.give,
      keptAwake,
      hasHaptics: device.vibrate !== undefined,
      hasSound: device.createAudio !== undefined,
    }),
    [feel, keptAwake, device],
  );
};
