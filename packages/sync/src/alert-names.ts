/** Names of the alerts' messages. */
export const UP = {
  alertsWatch: "alerts.watch",
  alertsLeave: "alerts.leave",
  alertMark: "alert.mark",
} as const;
export const DOWN = { alerts: "alerts.list", alertNotices: "alerts.notices" } as const;
