/** The one door of the simulator to the live server's core: everything between its transport and its database. */
export { alertChanges } from "../../apps/live/src/alerts/alert-changes.ts";
export type { AlertStore } from "../../apps/live/src/alerts/alert-store.ts";
export { tileAlertsOf } from "../../apps/live/src/alerts/tile-alerts.ts";
export { createLive, type Live } from "../../apps/live/src/live.ts";
export type { PrincipalOf } from "../../apps/live/src/look-ups.ts";
export { createOutlet } from "../../apps/live/src/outlet.ts";
export { secondChartists } from "../../apps/live/src/rooms/second-chartists.ts";
export { tileOf } from "../../apps/live/src/rooms/tile.ts";
export type { Runtime } from "../../apps/live/src/runtime.ts";
export type { Peer, Session } from "../../apps/live/src/session.ts";
export type { DayStore, LogStore } from "../../apps/live/src/store.ts";
export { pointEntry } from "../../apps/live/src/testing/entries.ts";
export { createMatchDay, MATCHES } from "../../apps/live/src/testing/match-day.ts";
export { createSessions, membersOf, type Person } from "../../apps/live/src/testing/principals.ts";
export { sampleWatch } from "../../apps/live/src/testing/sample-watch.ts";
