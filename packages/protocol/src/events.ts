/** Names of the messages, up (phone or board to server, each with an acknowledgement) and down. */
export const UP = {
  laneOpen: "lane.open",
  laneAppend: "lane.append",
  laneBeat: "lane.beat",
  courtWatch: "court.watch",
  courtRead: "court.read",
  courtLeave: "court.leave",
  boardWatch: "board.watch",
  boardLeave: "board.leave",
  alertsWatch: "alerts.watch",
  alertsLeave: "alerts.leave",
  alertMark: "alert.mark",
} as const;

export const DOWN = {
  boardTile: "board.tile",
  boardHeard: "board.heard",
  courtEntries: "court.entries",
  alerts: "alerts.list",
  alertNotices: "alerts.notices",
} as const;
