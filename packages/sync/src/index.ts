export type { Channel, ChannelState } from "./channel.ts";
export { createChannel } from "./channel.ts";
