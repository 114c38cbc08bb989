import type { KeptAwake } from "../use-wake-lock.ts";

/** Whether the screen stays on, as "This phone" says it. */
export const AWAKE_WORDS: Readonly<Record<KeptAwake, string>> = {
  yes: "Screen kept awake: yes.",
  notNow: "Screen kept awake: not now. This phone refused, as it does when its battery is low.",
  cannot: "Screen kept awake: this browser cannot. Set the phone’s own screen time-out longer.",
  plainHttp: "Screen kept awake: not over plain http. Set the phone’s own screen time-out longer.",
};
