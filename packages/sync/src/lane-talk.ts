import type { LaneAppendReply, LaneBeatReply, LaneOpenReply } from "@courtloom/protocol";
import { UP } from "@courtloom/protocol/names";
import type { Channel } from "./channel.ts";
import type { LaneAction, LaneEvent } from "./lane-state.ts";

type Sending = Extract<LaneAction, { type: "sendOpen" | "sendAppend" | "sendBeat" }>;

/** The sending half of a lane's driver: each message goes out and its answer comes back as an event. A channel never rejects. */
export const sendLaneMessage = async (
  channel: Channel,
  action: Sending,
  report: (event: LaneEvent) => void,
): Promise<void> => {
  switch (action.type) {
    case "sendOpen": {
      const reply = await channel.request<LaneOpenReply>(UP.laneOpen, action.message);
      return report({ type: "openAnswered", request: action.request, reply });
    }
    case "sendAppend": {
      const reply = await channel.request<LaneAppendReply>(UP.laneAppend, action.message);
      return report({ type: "appendAnswered", request: action.request, reply });
    }
    case "sendBeat": {
      const reply = await channel.request<LaneBeatReply>(UP.laneBeat, action.message);
      return report({ type: "beatAnswered", laneId: action.message.laneId, reply });
    }
  }
};
