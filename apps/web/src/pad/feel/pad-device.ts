import { createContext, useContext } from "react";
import type { KeptAwake } from "../use-wake-lock.ts";
import type { Felt } from "./feel.ts";

/** What the pad knows of the device that it runs on, for whichever part of the screen says or uses it. */
export interface PadDevice {
  readonly feel: (felt: Felt) => void;
  readonly keptAwake: KeptAwake;
  readonly hasHaptics: boolean;
  readonly hasSound: boolean;
}

/** Outside a pad nothing is felt and the screen sleeps as usual. */
const NO_DEVICE: PadDevice = {
  feel: () => undefined,
  keptAwake: "cannot",
  hasHaptics: false,
  hasSound: false,
};

export const PadDeviceContext = createContext<PadDevice>(NO_DEVICE);

export const usePadDevice = (): PadDevice => useContext(PadDeviceContext);
